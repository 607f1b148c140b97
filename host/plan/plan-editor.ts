import { type ReadonlySignal, signal } from '@preact/signals';
import type { Plan } from '../../core/tasting.ts';
import type { Status } from '../../shared/ui/status.ts';
import type { HttpAnswer } from '../../shared/wire/answer.ts';
import type { Opening, StoredPlan } from '../../shared/wire/http.ts';
import type { HostApi } from '../api.ts';
import type { Draft } from './draft.ts';
import { withDraws } from './drawn-codes.ts';
import { words } from './words.ts';

/** What every part of the plan page works with. */
export interface PlanEditor {
  readonly draft: Draft;
  readonly status: Status;
  /** What earlier evenings say of this one; undefined until it is here, or where nobody answers. */
  readonly opening: ReadonlySignal<Opening | undefined>;
  readonly edit: (change: (plan: Plan) => Plan) => void;
  /** Draws by lot what is due and was not yet, as in a plan that came from a file or an older page. */
  readonly draw: () => void;
  /** Changes the plan, says so, and offers a way back: `back` undoes just this change on the plan as it is then. */
  readonly change: (said: string, change: (plan: Plan) => Plan, back?: (plan: Plan) => Plan) => void;
}

/** What a part works with that asks the server too. */
export interface StoredPlanEditor {
  readonly editor: PlanEditor;
  readonly stored: StoredPlan;
  readonly api: HostApi;
}

export function planEditorOf(
  draft: Draft,
  status: Status,
  ask: () => Promise<HttpAnswer<Opening>>,
): PlanEditor {
  const opening = signal<Opening | undefined>(undefined);
  void ask().then((answer) => {
    if (answer.ok) opening.value = answer.body;
  });
  // What is drawn by lot stands in the plan from the moment in which it is due: a blind pour never lacks its code.
  const edit: PlanEditor['edit'] = (change) => draft.edit((plan) => withDraws(change(plan), cryptoRandom));
  return {
    draft,
    status,
    opening,
    edit,
    draw: () => draft.edit((plan) => withDraws(plan, cryptoRandom), true),
    change(said, change, back) {
      const before = draft.plan.value;
      edit(change);
      const undo = back ?? (() => before);
      status.say(said, { action: { label: words.undo, onPress: () => edit(undo) } });
    },
  };
}

/** Whole numbers drawn by the device's cryptographic source, as a number from 0 up to but not including 1. */
export function cryptoRandom(): number {
  const [word = 0] = crypto.getRandomValues(new Uint32Array(1));
  return word / 2 ** 32;
}
