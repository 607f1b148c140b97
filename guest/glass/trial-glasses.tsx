import type { SeatView, StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';

/** The three glasses of an odd-one-out, by their codes, in the order of this seat. */
export function TrialGlasses({ stage, own }: { readonly stage: StageUnderWay; readonly own: SeatView }) {
  const trial = own.trials.find(({ id }) => stage.cue.id === `${id}/odd-one-out`) ?? own.trials.at(-1);
  if (trial === undefined) return null;
  return (
    <section class="stack-tight">
      <h2>{words.trial.title}</h2>
      <ol class="trial-glasses">
        {trial.glasses.map((code) => (
          <li class="figures" key={code}>
            {code}
          </li>
        ))}
      </ol>
    </section>
  );
}
