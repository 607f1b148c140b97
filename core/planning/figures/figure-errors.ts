import type { AbvPercent } from '../../units.ts';

export type FigureName =
  | 'volume'
  | 'strength'
  | 'mass'
  | 'drops'
  | 'pour'
  | 'bottle'
  | 'vial'
  | 'guests'
  | 'seats'
  | 'host pours'
  | 'pours'
  | 'pours per guest'
  | 'reserve'
  | 'price'
  | 'count'
  | 'limit'
  | 'pour step'
  | 'smallest pour'
  | 'rate'
  | 'currency';

/** A figure that has no meaning where it was given. `figure` is for programs, the message for people. */
export class FigureOutOfRange extends RangeError {
  readonly figure: FigureName;
  readonly given: number | string;

  constructor(figure: FigureName, given: number | string, message: string) {
    super(message);
    this.name = 'FigureOutOfRange';
    this.figure = figure;
    this.given = given;
  }
}

/** @throws FigureOutOfRange for NaN, an infinity or a number outside least..most. */
export function requireBetween(figure: FigureName, given: number, least: number, most: number): void {
  if (given >= least && given <= most) return;
  throw new FigureOutOfRange(
    figure,
    given,
    `The ${figure} is ${given}. Give a number from ${least} to ${most}.`,
  );
}

/** The largest volume or mass that the sums take, in mL or g: a tonne. Beyond it, a comma has slipped. */
const MOST = 1_000_000;
/** The largest head count that the sums take; what a plan allows is the plan's own, smaller limit. */
const MOST_HEADS = 10_000;

/** @throws FigureOutOfRange unless 0 <= given <= 1,000,000. */
export const requireAmount = (figure: FigureName, given: number): void =>
  requireBetween(figure, given, 0, MOST);

/** @throws FigureOutOfRange unless given is a whole number from 0 to 10,000. */
export function requireHeadCount(figure: FigureName, given: number): void {
  requireBetween(figure, given, 0, MOST_HEADS);
  if (Number.isInteger(given)) return;
  throw new FigureOutOfRange(figure, given, `The ${figure} is ${given}. Give a whole number.`);
}

/** @throws FigureOutOfRange unless 0 <= strength <= 100; up to 200 the message asks whether it is US proof. */
export function requireStrength(strength: AbvPercent): void {
  if (strength > 100 && strength <= 200) {
    throw new FigureOutOfRange(
      'strength',
      strength,
      `The strength is ${strength} % vol, but nothing is above 100. If the label says ${strength} US proof, give ${strength / 2}.`,
    );
  }
  requireBetween('strength', strength, 0, 100);
}
