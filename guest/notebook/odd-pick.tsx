import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import { Choice } from '../../shared/ui/choice.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import type { SeatView, StageUnderWay } from '../../shared/wire/views.ts';
import { CountChoice } from '../consent/count-choice.tsx';
import { useRoom } from '../room/room.ts';
import { AllergenLine } from './allergen-line.tsx';

/**
 * Three glasses by their codes, in this seat's order; one must be picked, for a forced choice has no "no difference"
 * (ISO 4120:2021, 7.4). That it was a guess may be said.
 */
export function OddPick({ stage, own }: { readonly stage: StageUnderWay; readonly own: SeatView }) {
  const { notebook } = useRoom().follower;
  const trial = own.trials.find(({ id }) => stage.cue.id === `${id}/odd-one-out`) ?? own.trials.at(-1);
  if (trial === undefined) return null;
  const picked = notebook.read(trial.id, 'odd-one-out');
  const code = picked === null ? undefined : trial.glasses[picked.glass - 1];
  return (
    <section class="stack odd-pick">
      {stage.cue.allergens && !own.onlyWater && <AllergenLine told={stage.cue.allergens} />}
      <p class="soft">{words.trial.hint}</p>
      <Choice
        legend={words.trial.pick}
        across
        options={trial.glasses.map((value) => ({ value, label: value }))}
        value={code}
        onChoose={(chosen) =>
          notebook.write(trial.id, 'odd-one-out', {
            glass: trial.glasses.indexOf(chosen) + 1,
            guessed: picked?.guessed ?? false,
          })
        }
      />
      {picked === null || code === undefined ? (
        <p class="soft small">{words.trial.unsure}</p>
      ) : (
        <>
          <Switch
            label={words.trial.guessed}
            hint={words.trial.guessedHint}
            on={picked.guessed}
            onTurn={(guessed) => notebook.write(trial.id, 'odd-one-out', { ...picked, guessed })}
          />
          <CountChoice about="odd-one-out" pours={[trial.id]} />
          <p class="note-state">{words.trial.picked(code)}</p>
        </>
      )}
    </section>
  );
}
