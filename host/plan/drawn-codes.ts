import { drawBlindCodes } from '../../core/planning/serving/blind-codes.ts';
import { withServingOrders } from '../../core/planning/serving/drawn-orders.ts';
import { codesInUse, withTrials } from '../../core/planning/serving/trials.ts';
import type { Plan } from '../../core/tasting.ts';

/** Codes for the pours that have none yet; those that stand stay, because glasses may be marked with them. */
export function withCodes(plan: Plan, random: () => number): Plan {
  if (!plan.blind) return plan;
  const here = plan.pours.filter(({ id }) => plan.codes[id] !== undefined);
  const kept: Plan['codes'] = Object.fromEntries(
    here.flatMap(({ id }) => (plan.codes[id] === undefined ? [] : [[id, plan.codes[id]]])),
  );
  const bare = plan.pours.filter(({ id }) => plan.codes[id] === undefined);
  if (bare.length === 0 && here.length === Object.keys(plan.codes).length) return plan;
  const drawn = drawBlindCodes(bare.length, random, codesInUse({ ...plan, codes: kept }));
  const added = bare.flatMap(({ id }, index) => {
    const code = drawn[index];
    return code === undefined ? [] : [[id, code] as const];
  });
  return { ...plan, codes: { ...kept, ...Object.fromEntries(added) } };
}

/** All that is drawn by lot for a plan, where it has become due: codes, orders by seat, odd-ones-out. */
export const withDraws = (plan: Plan, random: () => number): Plan =>
  withServingOrders(withTrials(withCodes(plan, random), random), random);
