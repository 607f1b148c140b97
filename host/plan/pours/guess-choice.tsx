import { askedFacts } from '../../../core/guess/asked-facts.ts';
import type { GuessFact } from '../../../core/panel/guess/guess.ts';
import { Switch } from '../../../shared/ui/switch.tsx';
import type { PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';

/** Whether guests guess, and what of: only of what the plan knows is there anything to choose. */
export function GuessChoice({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const { on, without } = plan.guess;
  const said = words.pours;
  const known = askedFacts({ ...plan, guess: { on: true, without: [] } });
  const turn = (fact: GuessFact, asked: boolean): void =>
    editor.edit((now) => ({
      ...now,
      guess: {
        ...now.guess,
        without: [...now.guess.without.filter((each) => each !== fact), ...(asked ? [] : [fact])],
      },
    }));
  return (
    <>
      <Switch
        label={said.guess}
        hint={known.length === 0 ? said.guessNothing : said.guessHint}
        on={on}
        onTurn={(guessing) => editor.edit((now) => ({ ...now, guess: { ...now.guess, on: guessing } }))}
      />
      {on && known.length > 0 && (
        <fieldset class="guess-facts">
          <legend class="field-label">{said.guessWhat}</legend>
          {known.map((fact) => (
            <Switch
              key={fact}
              label={said.guessFacts[fact]}
              on={!without.includes(fact)}
              onTurn={(asked) => turn(fact, asked)}
            />
          ))}
        </fieldset>
      )}
    </>
  );
}
