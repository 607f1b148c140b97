import { studentPoint } from './distributions.ts';

/**
 * The 9-point liking scale, published by Peryam and Pilgrim in 1957: 1 is dislike extremely, 5 neither like nor
 * dislike, 9 like extremely.
 */
const LIKING_POINTS = [1, 2, 3, 4, 5, 6, 7, 8, 9] as const;
export type LikingRating = (typeof LIKING_POINTS)[number];

export function isLikingRating(value: unknown): value is LikingRating {
  return LIKING_POINTS.some((point) => point === value);
}

export type Liking =
  | { readonly status: 'no-ratings' }
  | {
      readonly status: 'rated';
      readonly n: number;
      readonly mean: number;
      readonly median: number;
      /** Quartiles as medians of the halves, the middle one left out of both (Moore and McCabe). */
      readonly quartiles: readonly [number, number];
      readonly least: number;
      readonly most: number;
      /** Sample standard deviation; null for one guest. */
      readonly standardDeviation: number | null;
      /** 95 % interval of the mean by Student's t, cut at the ends of the scale; null for one guest. */
      readonly meanInterval: readonly [number, number] | null;
      /** How many chose 1, 2, ..., 9. */
      readonly counts: readonly number[];
      readonly shape: LikingShape;
    };

/**
 * What the room made of it, by our own rule: divided when a quarter or more like it (6 and up) and a quarter or
 * more dislike it (4 and down), three guests or more; else by the median.
 */
type LikingShape = 'divided' | 'liked' | 'disliked' | 'neither';

function medianOf(sorted: readonly number[]): number {
  const middle = sorted.length / 2;
  return ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2;
}

function shapeOf(ratings: readonly number[], median: number): LikingShape {
  const quarter = ratings.length / 4;
  const likers = ratings.filter((rating) => rating >= 6).length;
  const dislikers = ratings.filter((rating) => rating <= 4).length;
  if (ratings.length >= 3 && likers >= quarter && dislikers >= quarter) return 'divided';
  if (median > 5) return 'liked';
  return median < 5 ? 'disliked' : 'neither';
}

/** Ratings of one pour by all who rated it; what is no point of the scale counts as not rated. */
export function summariseLiking(ratings: readonly (number | null)[]): Liking {
  const sorted = ratings.filter(isLikingRating).sort((a, b) => a - b);
  const n = sorted.length;
  if (n === 0) return { status: 'no-ratings' };
  const mean = sorted.reduce<number>((sum, rating) => sum + rating, 0) / n;
  const median = medianOf(sorted);
  const half = Math.floor(n / 2);
  const squared = sorted.reduce((sum, rating) => sum + (rating - mean) ** 2, 0);
  const standardDeviation = n > 1 ? Math.sqrt(squared / (n - 1)) : null;
  const reach =
    standardDeviation === null ? null : (studentPoint(0.025, n - 1) * standardDeviation) / Math.sqrt(n);
  return {
    status: 'rated',
    n,
    mean,
    median,
    quartiles: n > 1 ? [medianOf(sorted.slice(0, half)), medianOf(sorted.slice(n - half))] : [median, median],
    least: sorted[0] ?? mean,
    most: sorted[n - 1] ?? mean,
    standardDeviation,
    meanInterval: reach === null ? null : [Math.max(1, mean - reach), Math.min(9, mean + reach)],
    counts: LIKING_POINTS.map((point) => sorted.filter((rating) => rating === point).length),
    shape: shapeOf(sorted, median),
  };
}
