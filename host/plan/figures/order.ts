import { bestLineup, type FlightCut, type Lineup, weighOrder } from '../../../core/planning/order/lineup.ts';
import { checkTheme, type ThemeCheck } from '../../../core/planning/theme/theme.ts';
import { cutFlights, orderOptions } from '../../../core/planning/theme/theme-flights.ts';
import { flightsOf, type Plan } from '../../../core/tasting.ts';
import { sizesOf } from '../pour-edits.ts';
import { words } from '../words.ts';

export interface OrderFigures {
  /** The order as it stands. */
  readonly now: Lineup;
  /** The order that carries over least with the flights as they stand. */
  readonly best: Lineup;
  readonly checks: readonly ThemeCheck[];
}

/** The facts of one pour that would make the order surer, in words; empty where it has all. */
export const missingOf = ({ missing }: Pick<Lineup, 'missing'>, id: string): string =>
  [
    ...new Set(
      missing
        .filter(({ pour }) => pour === id)
        .map(({ facts }) => facts.map((fact) => words.factNames[fact]).join(words.missing.or)),
    ),
  ].join(', ');

const cutNow = (plan: Plan): FlightCut =>
  plan.pours.length === 0 ? { kind: 'one' } : { kind: 'sizes', sizes: sizesOf(plan) };

/** What the order costs now and at best, why each pour stands where it stands, and what the theme asks for. */
export function orderOf(plan: Plan): OrderFigures {
  const cut = cutNow(plan);
  const options = { ...orderOptions(plan.theme), cut };
  return {
    now: weighOrder(plan.pours, options),
    best: bestLineup(plan.pours, options),
    checks: checkTheme(
      plan.theme,
      plan.pours,
      flightsOf(plan).map(({ pours }) => pours),
    ),
  };
}

/** The pours in the order that carries over least; a comparison also cuts the flights by its sides. */
export function putInOrder(plan: Plan): Plan {
  const byTheme = plan.theme.kind === 'versus' && plan.pours.length > 1;
  const cut = byTheme ? cutFlights(plan.theme, plan.pours, plan.level) : cutNow(plan);
  const { steps } = bestLineup(plan.pours, { ...orderOptions(plan.theme), cut });
  const pours = steps.flatMap(({ pour }) => plan.pours.find(({ id }) => id === pour) ?? []);
  const sizes: number[] = [];
  for (const { flight } of steps) sizes[flight] = (sizes[flight] ?? 0) + 1;
  return { ...plan, pours, flightSizes: sizes.filter((size) => size > 0) };
}
