import { pourId } from '../../../core/ids.ts';
import { drawTrial, mostTrials, type TrialChoice } from '../../../core/planning/serving/trials.ts';
import { flightsOf, type Plan, type Trial } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { plus } from '../../../shared/ui/strokes.ts';
import { Fold } from '../fields/fold.tsx';
import { SelectField } from '../fields/select-field.tsx';
import { cryptoRandom, type PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';
import { newPourId } from './new-pour-id.ts';

/** Odd-ones-out: which two pours of the lineup, and when. Codes and orders are drawn, never chosen. */
export function TrialFold({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.trials;
  const { trials, pours } = plan;
  return (
    <Fold title={said.title} summary={trials.length === 0 ? said.none : said.some(trials.length)}>
      <p class="soft">{said.lead}</p>
      {trials.map((trial, index) => (
        <OneTrial key={trial.id} editor={editor} trial={trial} number={index + 1} />
      ))}
      {pours.length < 2 ? (
        <p class="soft">{said.needsTwo}</p>
      ) : trials.length >= mostTrials ? (
        <p class="soft">{said.full}</p>
      ) : (
        <div>
          <Button
            onPress={() =>
              editor.edit((now) => {
                const choice = firstChoice(now);
                return choice === undefined ? now : put(now, choice);
              })
            }
          >
            <Icon of={plus} />
            {said.add}
          </Button>
        </div>
      )}
    </Fold>
  );
}

/** The last two pours of the first flight that has two: they stand next to each other in their order. */
function firstChoice(plan: Plan): TrialChoice | undefined {
  const flight = flightsOf(plan).find(({ pours }) => pours.length > 1);
  const [a, b] = (flight?.pours ?? plan.pours).slice(-2);
  if (a === undefined || b === undefined) return undefined;
  return { id: newPourId(), flight: flight?.index ?? 0, a: a.id, b: b.id };
}

/** Draws codes and orders for the choice, in the place of the odd-one-out of the same id or behind the others. */
function put(plan: Plan, choice: TrialChoice): Plan {
  const drawn = drawTrial(plan, choice, cryptoRandom);
  const known = plan.trials.some(({ id }) => id === choice.id);
  return {
    ...plan,
    trials: known
      ? plan.trials.map((trial) => (trial.id === choice.id ? drawn : trial))
      : [...plan.trials, drawn],
  };
}

interface OneTrialProps {
  readonly editor: PlanEditor;
  readonly trial: Trial;
  readonly number: number;
}

function OneTrial({ editor, trial, number }: OneTrialProps) {
  const plan = editor.draft.plan.value;
  const said = words.trials;
  const name = (id: string) => plan.pours.find((pour) => pour.id === id)?.name ?? id;
  const options = (other: string) =>
    plan.pours.filter(({ id }) => id !== other).map(({ id, name }) => ({ value: String(id), label: name }));
  const choose = (change: Partial<TrialChoice>): void => {
    const { id, flight, a, b } = trial;
    editor.edit((now) => put(now, { id, flight, a, b, ...change }));
  };
  const { codes } = trial;
  const withTrial = (change: (trials: Plan['trials']) => Plan['trials']) => (now: Plan) => ({
    ...now,
    trials: change(now.trials),
  });
  return (
    <section class="plan-group" aria-label={said.number(number)}>
      <h3>{said.number(number)}</h3>
      <div class="plan-pair">
        <SelectField
          label={said.one}
          value={trial.a}
          options={options(trial.b)}
          onChoose={(value) => choose({ a: pourId(value) })}
        />
        <SelectField
          label={said.other}
          value={trial.b}
          options={options(trial.a)}
          onChoose={(value) => choose({ b: pourId(value) })}
        />
        <SelectField
          label={said.after}
          value={String(trial.flight)}
          options={flightsOf(plan).map(({ index }) => ({
            value: String(index),
            label: said.flight(index + 1),
          }))}
          onChoose={(value) =>
            editor.edit(
              withTrial((trials) =>
                trials.map((each) => (each.id === trial.id ? { ...each, flight: Number(value) } : each)),
              ),
            )
          }
        />
      </div>
      <p class="figures">
        {said.codes(name(trial.a), codes.a.join(said.and), name(trial.b), codes.b.join(said.and))}
      </p>
      <p class="soft small">
        {said.orders(trial.orders.length)} {said.counted}
      </p>
      <div class="plan-buttons">
        <Button
          onPress={() =>
            editor.change(
              said.drawn,
              (now) => put(now, trial),
              withTrial((trials) => trials.map((each) => (each.id === trial.id ? trial : each))),
            )
          }
        >
          {said.draw}
        </Button>
        <Button
          kind="danger"
          onPress={() =>
            editor.change(
              said.gone,
              withTrial((trials) => trials.filter(({ id }) => id !== trial.id)),
              withTrial((trials) => (trials.length >= mostTrials ? trials : [...trials, trial])),
            )
          }
        >
          {said.away}
        </Button>
      </div>
    </section>
  );
}
