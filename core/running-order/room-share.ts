/**
 * How many of the seats that are here must be ready before a room that sets its own pace goes on [P3].
 * @param share from 0.5 to 1
 */
export function readySeatsNeeded(share: number, here: number): number {
  // Rounding guards against 0.7 * 10 = 7.000000000000001.
  return Math.ceil(Number((share * here).toFixed(6)));
}
