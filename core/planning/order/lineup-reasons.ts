import type { AxisCode } from './axes/axis.ts';
import { type AxisStep, carryOverAt, type Distance, POINT, pull, stepsBetween } from './carry-over.ts';
import type { PourReading } from './order-axes.ts';

/** Why a pour stands directly after the one before it. Levels run from 0 to 1. */
export type StepReason =
  /** The first of the evening. */
  | { readonly code: 'opens' }
  /** It stands higher on this axis, the one that decided most. */
  | { readonly code: 'rises'; readonly axis: AxisCode; readonly from: number; readonly to: number }
  /** As `rises`, but one of the two levels is a stand-in for a missing fact. */
  | { readonly code: 'rises-if-assumed'; readonly axis: AxisCode; readonly from: number; readonly to: number }
  /** It stands lower on the whole; a break lies between and a new flight starts again from below. */
  | { readonly code: 'starts-again'; readonly axis: AxisCode; readonly from: number; readonly to: number }
  /** It stands lower on the whole, most of all on this axis; the rest of the order pays for it. */
  | { readonly code: 'gives-way'; readonly axis: AxisCode; readonly from: number; readonly to: number }
  /** No known fact tells the two apart. */
  | { readonly code: 'equal' };

type RiskCode = `${AxisCode}-before-a-lower-one`;

/** Something that an order leaves for the palate to bear, and what helps. */
export interface Risk {
  readonly code: RiskCode;
  readonly axis: AxisCode;
  readonly earlier: string;
  readonly later: string;
  readonly distance: Distance;
  readonly severity: 'some' | 'strong';
  /** `longer-water`: rinse and wait longer; `longer-water-or-move`: better still, move one of the two. */
  readonly remedy: 'longer-water' | 'longer-water-or-move';
  readonly assumed: boolean;
}

const SOME_RISK = 0.5 * POINT;
const STRONG_RISK = 2 * POINT;

const strongest = (steps: readonly AxisStep[], sign: 1 | -1): AxisStep | undefined =>
  steps
    .filter((step) => pull(step) * sign > 0)
    .reduce<AxisStep | undefined>(
      (most, step) => (most === undefined || Math.abs(pull(step)) > Math.abs(pull(most)) ? step : most),
      undefined,
    );

/** The reason for a place, from the pour before it; known facts speak before assumed ones. */
export function explainStep(
  before: PourReading | undefined,
  pour: PourReading,
  opensFlight: boolean,
): StepReason {
  if (before === undefined) return { code: 'opens' };
  const steps = stepsBetween(before, pour);
  const known = steps.filter(({ assumed }) => !assumed);
  const net = steps.reduce((sum, step) => sum + pull(step), 0);
  const fall = strongest(known, -1) ?? strongest(steps, -1);
  if (net < 0 && fall !== undefined) {
    const { axis, from, to } = fall;
    return { code: opensFlight ? 'starts-again' : 'gives-way', axis, from, to };
  }
  const knownRise = strongest(known, 1);
  const rise = knownRise ?? strongest(steps, 1);
  if (rise === undefined) return { code: 'equal' };
  const { axis, from, to } = rise;
  return { code: knownRise === undefined ? 'rises-if-assumed' : 'rises', axis, from, to };
}

/** Every fall that still weighs after distance and breaks are counted, heaviest first. */
export function risksOf(order: readonly PourReading[], flights: readonly number[]): Risk[] {
  const weighed = order.flatMap((later, position) =>
    order.slice(0, position).flatMap((earlier, index) => {
      const sameFlight = flights[index] === flights[position];
      const distance: Distance =
        index < position - 1 ? 'earlier' : sameFlight ? 'neighbour' : 'neighbour-after-break';
      return stepsBetween(earlier, later).flatMap(({ axis, rise, assumed }) => {
        const weight = carryOverAt(Math.max(0, -rise), distance);
        if (weight < SOME_RISK) return [];
        const strong = weight >= STRONG_RISK;
        const risk: Risk = {
          code: `${axis}-before-a-lower-one`,
          axis,
          earlier: earlier.id,
          later: later.id,
          distance,
          severity: strong ? 'strong' : 'some',
          remedy: strong ? 'longer-water-or-move' : 'longer-water',
          assumed,
        };
        return [{ risk, weight }];
      });
    }),
  );
  return weighed.sort((a, b) => b.weight - a.weight).map(({ risk }) => risk);
}
