import { USUAL_POUR_SIZES } from '../../../core/planning/strength/smaller-pours.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Notice } from '../../../shared/ui/notice.tsx';
import { number } from '../../numbers.ts';
import { pourVolume, strengthOf, withSmallerPours } from '../figures/strength.ts';
import { drinksOf } from '../part-summaries.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { volume } from '../volume.ts';
import { words } from '../words.ts';

/** The caution when an evening pours much, with what to do about it. */
export function StrengthNotice({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const { evening, counted } = strengthOf(plan);
  const { caution, total, standard } = evening;
  if (caution.level === 'quiet') return null;
  const said = words.figures.strength;
  const loud = caution.level === 'loud';
  const sentence = loud ? said.loud : said.notice;
  const { offer, line } = caution;
  const drawn = said.lines[line.id];
  return (
    <Notice kind={loud ? 'caution' : 'info'} title={loud ? said.loudTitle : drawn.above}>
      <p>
        {sentence(
          number(total.mass, 1),
          drinksOf(total.drinks, standard),
          drawn.whose,
          number(line.ethanol, 1),
        )}
      </p>
      {offer.kind === 'smaller-pours' ? (
        <Button
          onPress={() =>
            editor.change(
              said.smallerTaken,
              (now) => withSmallerPours(now, counted, offer.volumes),
              (now) =>
                withSmallerPours(
                  now,
                  counted,
                  counted.map((pour) => pourVolume(pour, now)),
                ),
            )
          }
        >
          {said.smaller(number(offer.ethanol, 1))}
        </Button>
      ) : (
        <p>
          {said.fewer(
            volume(USUAL_POUR_SIZES.smallest, plan.volumeUnit),
            offer.keep,
            number(offer.ethanol, 1),
          )}
        </p>
      )}
    </Notice>
  );
}
