import { drynessTerm, powerStep } from '../../core/planning/order/mark-steps.ts';
import type { Pour } from '../../core/tasting.ts';
import { TextArea } from '../../shared/ui/text-area.tsx';
import { PourNumber } from '../plan/fields/pour-number.tsx';
import { StrengthField } from '../plan/fields/strength-field.tsx';
import { missingOf, orderOf } from '../plan/figures/order.ts';
import { withFact, withMark } from '../plan/pour-edits.ts';
import { DrinkFacts } from '../plan/pours/drink-facts.tsx';
import { words } from '../plan/words.ts';
import { LabelPhotos, type LabelPhotosProps } from './label-photos.tsx';
import { MarkSlider } from './mark-slider.tsx';

/** What a mark means on its scale. */
const stepsOf = {
  pungency: (mark: number) => words.ahead.powerSteps[powerStep(mark)] ?? '',
  dryness: (mark: number) => words.ahead.drynessTerms[drynessTerm(mark)],
} as const;

/** Both marks and the strength are there: what most of the order hangs on. */
export const isTasted = ({ marks, abv }: Pour): boolean =>
  marks?.pungency !== undefined && marks.dryness !== undefined && abv !== undefined;

export function TastedPour(props: LabelPhotosProps) {
  const { editor, pour } = props;
  const said = words.ahead;
  const set = <Key extends keyof Pour>(key: Key, value: Pour[Key] | undefined): void =>
    editor.edit((now) => withFact(now, pour.id, key, value));
  const missing = missingOf(orderOf(editor.draft.plan.value).now, pour.id);
  return (
    <>
      <h2 class="ahead-name">{pour.name}</h2>
      <LabelPhotos {...props} />
      <section class="stack" aria-labelledby="marks">
        <h3 id="marks">{said.marks}</h3>
        {(['pungency', 'dryness'] as const).map((axis) => (
          <MarkSlider
            key={axis}
            said={said[axis]}
            measure={said.measures[axis]}
            stepOf={stepsOf[axis]}
            mark={pour.marks?.[axis]}
            onMark={(mark) => editor.edit((now) => withMark(now, pour.id, axis, mark))}
          />
        ))}
      </section>
      <section class="stack" aria-labelledby="order">
        <h3 id="order">{said.order}</h3>
        <StrengthField abv={pour.abv} onAbv={(abv) => set('abv', abv)} />
        {pour.drink !== 'beer' && (
          <div class="plan-pair">
            <PourNumber pour={pour} set={set} of="ageYears" />
            <PourNumber pour={pour} set={set} of="vintage" />
          </div>
        )}
        <DrinkFacts pour={pour} set={set} />
        <p class="small soft">{missing === '' ? said.orderKnown : said.orderMissing(missing)}</p>
      </section>
      <TextArea
        label={said.line}
        hint={said.lineHint}
        value={pour.hostNote ?? ''}
        maxLength={1000}
        rows={2}
        onInput={(line) => set('hostNote', line === '' ? undefined : line)}
      />
    </>
  );
}
