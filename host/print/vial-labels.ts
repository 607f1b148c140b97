import type { Plan, Pour } from '../../core/tasting.ts';
import { labelOf } from './mat-sheets.ts';

/** What stands on one vial of a guest at home. */
export interface VialLabel {
  /** Its code, or its place in the order of tasting. */
  readonly mark: string;
  readonly pour: Pour;
  /** Whether the name and the strength may stand on it. */
  readonly tells: boolean;
}

/**
 * The labels of one kit: the pours in order, then the glasses of odd-ones-out by their four codes, of which the guest's
 * phone asks for three. Those never tell what they hold, however open the tasting is.
 */
export function vialLabels(plan: Plan): VialLabel[] {
  const pours = plan.pours.map((pour) => ({ mark: labelOf(plan, pour), pour, tells: !plan.blind }));
  const trials = plan.trials.flatMap((trial) =>
    (['a', 'b'] as const).flatMap((drink) => {
      const pour = plan.pours.find(({ id }) => id === trial[drink]);
      return pour === undefined ? [] : trial.codes[drink].map((mark) => ({ mark, pour, tells: false }));
    }),
  );
  return [...pours, ...trials];
}
