import { useEffect, useState } from 'preact/hooks';
import { allergenWords } from '../../../shared/language/en/allergens.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { QrCode } from '../../../shared/ui/qr-code.tsx';
import type { CrowdView } from '../../../shared/wire/http.ts';
import { guestAddresses } from '../../evening/guest-addresses.ts';
import { Fold } from '../fields/fold.tsx';
import { SharedLink } from '../fields/shared-link.tsx';
import type { PlanEditor, StoredPlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';
import { AdviceWords } from './advice-words.tsx';
import { SpreadBars } from './spread-bars.tsx';

/** How often a page that is looked at asks whether more guests have answered. */
const lookMs = 15_000;

/** The survey's link to send, and what has come of it. */
export function CrowdSurvey({ editor, stored, api }: StoredPlanEditor) {
  const said = words.survey;
  const plan = editor.draft.plan.value;
  const { tasting } = stored;
  const [crowd, setCrowd] = useState<CrowdView>();
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let gone = false;
    const look = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      const answer = await api.crowd(tasting);
      if (gone) return;
      setFailed(!answer.ok);
      if (answer.ok) setCrowd(answer.body);
    };
    void look();
    const timer = setInterval(() => void look(), lookMs);
    const seen = (): void => void look();
    document.addEventListener('visibilitychange', seen);
    return () => {
      gone = true;
      clearInterval(timer);
      document.removeEventListener('visibilitychange', seen);
    };
  }, [api, tasting]);

  const link = guestAddresses(stored, window.location.origin)[0]?.survey ?? '';
  return (
    <section class="plan-group" aria-labelledby="survey">
      <h3 id="survey">{said.title}</h3>
      <p class="soft">{said.lead}</p>
      <SharedLink
        label={said.link}
        link={link}
        copy={said.copy}
        onCopied={(copied) => editor.status.say(copied ? said.copied : said.selected)}
      />
      <Fold title={said.square} small>
        <QrCode of={link} label={said.scan} />
      </Fold>
      {failed && <p class="soft">{said.noAnswer}</p>}
      {crowd !== undefined && (
        <>
          <p>{said.answered(crowd.answered, plan.guests + plan.remoteGuests)}</p>
          {crowd.avoids.length > 0 && (
            <p>
              {allergenWords.avoided(
                crowd.avoids.map(({ allergen, guests }) =>
                  allergenWords.times(allergenWords.names[allergen], guests),
                ),
              )}
            </p>
          )}
          {crowd.answered > 0 && <Answers editor={editor} crowd={crowd} />}
        </>
      )}
    </section>
  );
}

function Answers({ editor, crowd: { advice } }: { readonly editor: PlanEditor; readonly crowd: CrowdView }) {
  const plan = editor.draft.plan.value;
  const said = words.guests;
  const { level, practice } = plan;
  return (
    <>
      <SpreadBars spread={advice.spread} />
      <AdviceWords advice={advice} />
      {advice.status === 'advised' &&
        (level === advice.level && practice === advice.practiceRound ? (
          <p class="soft">{words.survey.standsSo}</p>
        ) : (
          <div>
            <Button
              onPress={() =>
                editor.change(
                  said.adviceTaken,
                  (now) => ({ ...now, level: advice.level, practice: advice.practiceRound }),
                  (now) => ({ ...now, level, practice }),
                )
              }
            >
              {said.takeAdvice}
            </Button>
          </div>
        ))}
    </>
  );
}
