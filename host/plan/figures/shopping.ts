import { waysOf } from '../../../core/drinks/drink-ways.ts';
import { costPerSeat, type SeatCost } from '../../../core/planning/shopping/cost.ts';
import {
  type BottlesToBuy,
  bottlesToBuy,
  USUAL_RESERVE,
} from '../../../core/planning/shopping/quantities.ts';
import { type RemoteKit, remoteKit } from '../../../core/planning/shopping/remote-kit.ts';
import { type TableSupplies, tableSupplies } from '../../../core/planning/shopping/table-supplies.ts';
import { type Drink, flightsOf, type Plan, type Pour } from '../../../core/tasting.ts';
import { type Millilitres, millilitres, minorUnits } from '../../../core/units.ts';
import { pourVolume } from './strength.ts';

/** The size in which a drink is mostly sold (common practice, no source). */
const usualBottle: Readonly<Record<Drink, Millilitres>> = {
  spirit: millilitres(700),
  wine: millilitres(750),
  beer: millilitres(330),
};

/** One to taste ahead of the evening, one to taste along. */
const hostPours = 2;

export interface BottleLine {
  readonly pour: Pour;
  readonly bottle: Millilitres;
  /** The bottle's size is not told, so the usual one is taken. */
  readonly assumed: boolean;
  readonly order: BottlesToBuy;
}

export interface ShoppingFigures {
  readonly bottles: readonly BottleLine[];
  readonly totalBottles: number;
  readonly supplies: TableSupplies;
  readonly kit: RemoteKit;
  /** What is in each vial of the kit: the pours in order, then what odd-ones-out need. */
  readonly vialsOf: readonly Pour[];
  readonly cost: SeatCost;
  readonly unpriced: readonly Pour[];
  /** Priced, and larger than their bottle, so that nobody knows how many bottles to pay. */
  readonly uncounted: readonly Pour[];
}

const glassesOfTrial = 3;

/** Glasses of a drink that a guest is poured in odd-ones-out: two at the most in each, and who gets two is a lot's affair. */
const inTrials = (plan: Plan, { id }: Pour): number =>
  2 * plan.trials.filter(({ a, b }) => a === id || b === id).length;

/**
 * What is in the vials of one guest at home: one of each pour, then two of each drink of an odd-one-out, because kits
 * are filled before anybody knows which order the guest will be served.
 */
const vialsOf = (plan: Plan): Pour[] => [
  ...plan.pours,
  ...plan.pours.flatMap((pour) => Array.from({ length: inTrials(plan, pour) }, () => pour)),
];

/** What to get. `washed`: glasses are washed between flights, so that one flight's glasses are enough. */
export function shoppingFor(plan: Plan, washed: boolean): ShoppingFigures {
  const guests = plan.guests + plan.remoteGuests;
  const bottles = plan.pours.map((pour): BottleLine => {
    const bottle = pour.bottleMl === undefined ? usualBottle[pour.drink] : millilitres(pour.bottleMl);
    const order = bottlesToBuy({
      guests,
      poursPerGuest: 1 + inTrials(plan, pour),
      hostPours,
      pour: pourVolume(pour, plan),
      bottle,
      reserve: USUAL_RESERVE,
    });
    return { pour, bottle, assumed: pour.bottleMl === undefined, order };
  });
  const count = (line: BottleLine) => (line.order.kind === 'bottles' ? line.order.bottles : 0);
  const vials = vialsOf(plan);
  const glasses = plan.pours.length + glassesOfTrial * plan.trials.length;
  // The glasses of an odd-one-out stand on the table with those of their flight: it comes before the talk.
  const longest = Math.max(
    0,
    ...flightsOf(plan).map(
      ({ index, pours }) =>
        pours.length + glassesOfTrial * plan.trials.filter(({ flight }) => flight === index).length,
    ),
  );
  const ways = plan.pours.map(({ drink }) => waysOf[drink]);
  return {
    bottles,
    totalBottles: bottles.reduce((sum, line) => sum + count(line), 0),
    supplies: tableSupplies({
      // The host tastes along.
      seats: plan.pours.length === 0 ? 0 : plan.guests + 1,
      pours: glasses,
      glassesAtOnce: washed ? longest : glasses,
      lids: ways.some(({ lids }) => lids),
      droppers: plan.drops !== 'none' && ways.some(({ dropsOfWater }) => dropsOfWater > 0),
    }),
    kit: remoteKit(
      plan.remoteGuests,
      vials.map((pour) => pourVolume(pour, plan)),
    ),
    vialsOf: vials,
    cost: costPerSeat(
      plan.currency,
      bottles
        .filter(({ pour }) => pour.priceMinor !== undefined)
        .map((line) => ({ price: minorUnits(line.pour.priceMinor ?? 0), count: count(line) })),
      guests,
    ),
    unpriced: plan.pours.filter((pour) => pour.priceMinor === undefined),
    uncounted: bottles
      .filter(({ pour, order }) => pour.priceMinor !== undefined && order.kind === 'bottle-below-pour')
      .map(({ pour }) => pour),
  };
}
