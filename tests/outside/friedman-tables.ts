import { EXACT_BUDGET, type SpreadAtom, spreadDistribution } from '../../core/panel/row-permutations.ts';

/** The tables that handbooks print for Friedman's test, reckoned: n judges, k samples, no ties. */
function untiedAtoms(k: number, n: number, budget: number): SpreadAtom[] | 'too-large' {
  if (!Number.isInteger(k) || !Number.isInteger(n) || k < 2 || n < 1) {
    throw new RangeError(
      `Whole numbers of two samples or more and one judge or more are needed, not ${k}, ${n}.`,
    );
  }
  const row = Array.from({ length: k }, (_, index) => index);
  return spreadDistribution(
    Array.from({ length: n }, () => row),
    budget,
  );
}

/** spread = k Σ(R - mean)², and χ² = 12 Σ(R - mean)² / (nk(k+1)). */
const chi2Of = (spread: number, k: number, n: number): number => (12 * spread) / (n * k * k * (k + 1));

/**
 * P(χ² >= chi2) exactly, without ties; null when too large to count. A printed value is taken for the attainable
 * one that it rounds: Σ(R - mean)² moves in steps of 2, so anything within a quarter of a step counts as equal.
 */
export function friedmanExactP(
  { k, n, chi2 }: { readonly k: number; readonly n: number; readonly chi2: number },
  budget: number = EXACT_BUDGET,
): number | null {
  const atoms = untiedAtoms(k, n, budget);
  if (atoms === 'too-large') return null;
  const quarterStep = 6 / (n * k * (k + 1));
  const tail = atoms
    .filter((atom) => chi2Of(atom.spread, k, n) >= chi2 - quarterStep)
    .reduce((sum, atom) => sum + atom.probability, 0);
  return Math.min(1, tail);
}

export type FriedmanCritical =
  | { readonly status: 'attainable'; readonly critical: number; readonly p: number }
  /** Even judges of one mind would not reach it. */
  | { readonly status: 'out-of-reach' }
  | { readonly status: 'too-large' };

/** The smallest χ² that n judges can give over k samples with P(χ² >= it) <= alpha, without ties. */
export function friedmanCritical(
  { k, n, alpha }: { readonly k: number; readonly n: number; readonly alpha: number },
  budget: number = EXACT_BUDGET,
): FriedmanCritical {
  const atoms = untiedAtoms(k, n, budget);
  if (atoms === 'too-large') return { status: 'too-large' };
  let tail = 0;
  let found: FriedmanCritical = { status: 'out-of-reach' };
  for (const atom of [...atoms].reverse()) {
    tail += atom.probability;
    if (tail > alpha * (1 + 1e-12)) break;
    found = { status: 'attainable', critical: chi2Of(atom.spread, k, n), p: tail };
  }
  return found;
}
