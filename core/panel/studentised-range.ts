import { normalUpperTail, pointOfTail } from './distributions.ts';

/**
 * The range of k independent standard normal values, that is, the studentised range with infinite degrees of
 * freedom: P(range <= q) = k ∫ φ(z) [Φ(z) - Φ(z - q)]^(k-1) dz (Hartley 1942). The integrand is smooth and
 * dies off like a normal curve at both ends, where the plain trapezoid rule converges faster than any power of
 * its step.
 */
const STEP = 1 / 16;
const REACH = 9;

const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** P(range of k >= q), k >= 2 whole. */
export function studentisedRangeUpperTail(q: number, k: number): number {
  if (q <= 0) return 1;
  let sum = 0;
  for (let z = -REACH; z <= REACH; z += STEP) {
    const within = normalUpperTail(z - q) - normalUpperTail(z);
    sum += normalDensity(z) * within ** (k - 1);
  }
  return Math.min(1, Math.max(0, 1 - k * STEP * sum));
}

/** The q with P(range of k >= q) = alpha. @throws RangeError unless k is whole and >= 2, and 0 < alpha < 1 */
export function studentisedRangePoint(alpha: number, k: number): number {
  if (!Number.isInteger(k) || k < 2 || !(alpha > 0 && alpha < 1)) {
    throw new RangeError(
      `A range needs two values or more and a tail between 0 and 1, not ${k} and ${alpha}.`,
    );
  }
  return pointOfTail((q) => studentisedRangeUpperTail(q, k), alpha, [0, 100]);
}
