/** A statement with how sure somebody was of it, from 0 to 1, and whether it was so. */
export interface Stated {
  readonly sure: number;
  readonly right: boolean;
}

/**
 * The mean square of how far a stated chance was from what came out: 0 is the best, 1 the worst, and who always says "half"
 * gets 0.25. It is a proper rule: nobody expects a better score by saying another chance than the one they believe in (Brier,
 * "Verification of forecasts expressed in terms of probability", Monthly Weather Review 78, 1950, for two classes in the form
 * of one term; Gneiting and Raftery, Journal of the American Statistical Association 102, 2007).
 *
 * @returns undefined where nothing was stated
 */
export function brierScore(stated: readonly Stated[]): number | undefined {
  if (stated.length === 0) return undefined;
  return stated.reduce((sum, { sure, right }) => sum + (sure - Number(right)) ** 2, 0) / stated.length;
}
