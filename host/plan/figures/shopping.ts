import { waysOf } from '../../../core/drinks/ways.ts';
import { costPerSeat, type SeatCost } from '../../../core/planning/cost.ts';
import { type BottlesToBuy, bottlesToBuy, USUAL_RESERVE } from '../../../core/planning/quantities.ts';
import { type RemoteKit, remoteKit } from '../../../core/planning/remote-kit.ts';
import { type TableSupplies, tableSupplies } from '../../../core/planning/table-supplies.ts';
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
  readonly cost: SeatCost;
  readonly unpriced: readonly Pour[];
}

/** What to get. `washed`: glasses are washed between flights, so that one flight's glasses are enough. */
export function shoppingFor(plan: Plan, washed: boolean): ShoppingFigures {
  const guests = plan.guests + plan.remoteGuests;
  const bottles = plan.pours.map((pour): BottleLine => {
    const bottle = pour.bottleMl === undefined ? usualBottle[pour.drink] : millilitres(pour.bottleMl);
    const order = bottlesToBuy({
      guests,
      poursPerGuest: 1,
      hostPours,
      pour: pourVolume(pour),
      bottle,
      reserve: USUAL_RESERVE,
    });
    return { pour, bottle, assumed: pour.bottleMl === undefined, order };
  });
  const count = (line: BottleLine) => (line.order.kind === 'bottles' ? line.order.bottles : 0);
  const longest = Math.max(0, ...flightsOf(plan).map(({ pours }) => pours.length));
  const ways = plan.pours.map(({ drink }) => waysOf[drink]);
  return {
    bottles,
    totalBottles: bottles.reduce((sum, line) => sum + count(line), 0),
    supplies: tableSupplies({
      // The host tastes along.
      seats: plan.pours.length === 0 ? 0 : plan.guests + 1,
      pours: plan.pours.length,
      glassesAtOnce: washed ? longest : plan.pours.length,
      lids: ways.some(({ lids }) => lids),
      droppers: ways.some(({ dropsOfWater }) => dropsOfWater > 0),
    }),
    kit: remoteKit(plan.remoteGuests, plan.pours.map(pourVolume)),
    cost: costPerSeat(
      plan.currency,
      bottles
        .filter(({ pour }) => pour.priceMinor !== undefined)
        .map((line) => ({ price: minorUnits(line.pour.priceMinor ?? 0), count: count(line) })),
      guests,
    ),
    unpriced: plan.pours.filter((pour) => pour.priceMinor === undefined),
  };
}
