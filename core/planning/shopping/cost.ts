import { type MinorUnits, minorUnits } from '../../units.ts';
import { FigureOutOfRange, requireBetween, requireHeadCount } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';

/** So many things at one price, all in one currency: bottles, hired glasses, the room. */
export interface CostLine {
  readonly price: MinorUnits;
  readonly count: number;
}

export type SeatCost =
  | {
      readonly kind: 'seat-cost';
      readonly currency: string;
      readonly total: MinorUnits;
      /** Rounded up to the whole minor unit, so that the seats together cover the total. */
      readonly perSeat: MinorUnits;
      /** What the rounding brings in beyond the total: less than one minor unit for each seat. */
      readonly surplus: MinorUnits;
      readonly reckoning: Reckoning;
    }
  /** There is nobody to share the cost. */
  | { readonly kind: 'no-seats'; readonly currency: string; readonly total: MinorUnits };

function requirePrice(price: MinorUnits): void {
  requireBetween('price', price, 0, 10_000_000_000);
  if (Number.isInteger(price)) return;
  throw new FigureOutOfRange(
    'price',
    price,
    `The price is ${price} of the smallest unit. Give a whole number of cents, pence or the like.`,
  );
}

/**
 * What one seat costs, in whole minor units of one currency (ISO 4217 code; how many minor units make a major
 * one is the screen's to know).
 * @throws FigureOutOfRange for a currency that is not three capital letters, a price that is not a whole number
 * from 0, a count or number of seats that is not a whole number from 0 to 10,000, or a sum too large to be exact.
 */
export function costPerSeat(currency: string, lines: readonly CostLine[], seats: number): SeatCost {
  if (!/^[A-Z]{3}$/.test(currency)) {
    throw new FigureOutOfRange(
      'currency',
      currency,
      'The currency is not known. Give its three letters, such as EUR.',
    );
  }
  requireHeadCount('seats', seats);
  const costs = lines.map((line) => {
    requirePrice(line.price);
    requireHeadCount('count', line.count);
    return line.price * line.count;
  });
  const total = minorUnits(costs.reduce((sum, cost) => sum + cost, 0));
  if (!Number.isSafeInteger(total)) {
    throw new FigureOutOfRange('price', total, 'The sum is too large to be exact. Look for a slipped comma.');
  }
  if (seats === 0) return { kind: 'no-seats', currency, total };
  // Whole numbers below 2^53: the remainder is exact where a quotient would not be.
  const remainder = total % seats;
  const perSeat = minorUnits((total - remainder) / seats + (remainder > 0 ? 1 : 0));
  return {
    kind: 'seat-cost',
    currency,
    total,
    perSeat,
    surplus: minorUnits(perSeat * seats - total),
    reckoning: [
      ...lines.map((line) =>
        step(
          'cost-line',
          { price: figure(line.price, 'minor units'), count: figure(line.count, 'pieces') },
          figure(line.price * line.count, 'minor units'),
          'definition',
        ),
      ),
      step('cost-sum', { lines: figure(lines.length, 'pieces') }, figure(total, 'minor units'), 'definition'),
      step(
        'cost-per-seat',
        { total: figure(total, 'minor units'), seats: figure(seats, 'seats') },
        figure(perSeat, 'minor units'),
        'definition',
      ),
    ],
  };
}
