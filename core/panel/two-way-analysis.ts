import { fUpperTail } from './distributions.ts';
import { completeJudges, type Scores } from './mid-ranks.ts';

/**
 * Scores split into what the samples, the judges and neither explain: rows are samples (drinks), columns judges.
 * It treats scores as measurements; for marks on a short scale the ranking test is the safer one. A judge who
 * missed a sample is left out.
 */
export interface TwoWayTable {
  readonly samples: number;
  readonly judges: number;
  readonly meanSquares: {
    readonly samples: number;
    readonly withinSamples: number;
    readonly judges: number;
    readonly error: number;
  };
}

export type TwoWayAnalysis =
  /** Two samples and two judges are the least. */
  | { readonly status: 'too-few' }
  | { readonly status: 'no-variation' }
  | ({ readonly status: 'analysed' } & TwoWayTable);

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const squares = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value * value, 0);

export function twoWayAnalysis(scores: Scores): TwoWayAnalysis {
  const width = scores.reduce((most, row) => Math.max(most, row.length), 0);
  const byJudge = Array.from({ length: width }, (_, judge) => scores.map((row) => row[judge] ?? null));
  const { rows: columns } = completeJudges(byJudge);
  const judges = columns.length;
  const samples = scores.length;
  if (judges < 2 || samples < 2) return { status: 'too-few' };

  const grand = sum(columns.flat()) / (judges * samples);
  const centred = columns.map((column) => column.map((value) => value - grand));
  const judgeMeans = centred.map((column) => sum(column) / samples);
  const sampleMeans = Array.from(
    { length: samples },
    (_, sample) => sum(centred.map((column) => column[sample] ?? 0)) / judges,
  );
  const residuals = centred.map((column, judge) =>
    column.map((value, sample) => value - (judgeMeans[judge] ?? 0) - (sampleMeans[sample] ?? 0)),
  );
  const total = squares(centred.flat());
  // What is left by rounding alone counts as nothing.
  const cleared = (value: number) =>
    value <= 1e-20 * (total + judges * samples * grand * grand) ? 0 : value;
  if (cleared(total) === 0) return { status: 'no-variation' };
  const betweenSamples = cleared(judges * squares(sampleMeans));
  const betweenJudges = cleared(samples * squares(judgeMeans));
  const error = cleared(squares(residuals.flat()));
  return {
    status: 'analysed',
    samples,
    judges,
    meanSquares: {
      samples: betweenSamples / (samples - 1),
      withinSamples: (betweenJudges + error) / (samples * (judges - 1)),
      judges: betweenJudges / (judges - 1),
      error: error / ((samples - 1) * (judges - 1)),
    },
  };
}

export interface VarianceRatio {
  /** null when the error is nothing and the ratio has no bound. */
  readonly f: number | null;
  readonly df: number;
  readonly p: number;
}

/** The F tests of a two-way table without repeats: do samples differ, and do judges use the scale differently? */
export function varianceRatios({ samples, judges, meanSquares }: TwoWayTable): {
  readonly samples: VarianceRatio;
  readonly judges: VarianceRatio;
  readonly dfError: number;
} {
  const dfError = (samples - 1) * (judges - 1);
  const ratio = (meanSquare: number, df: number): VarianceRatio => {
    if (meanSquare === 0) return { f: 0, df, p: 1 };
    if (meanSquares.error === 0) return { f: null, df, p: 0 };
    const f = meanSquare / meanSquares.error;
    return { f, df, p: fUpperTail(f, df, dfError) };
  };
  return {
    samples: ratio(meanSquares.samples, samples - 1),
    judges: ratio(meanSquares.judges, judges - 1),
    dfError,
  };
}

/** The six intraclass correlations; null where 0/0. Below 0 means no agreement. */
export interface IntraclassCorrelations {
  readonly icc11: number | null;
  readonly icc21: number | null;
  readonly icc31: number | null;
  readonly icc1k: number | null;
  readonly icc2k: number | null;
  readonly icc3k: number | null;
}

/**
 * Shrout and Fleiss 1979: one judge (…1) or the mean of all judges (…k); judges differ from sample to sample (1),
 * are the same and stand for others like them (2), or are the only ones that matter (3).
 */
export function intraclassCorrelations({
  samples: n,
  judges: k,
  meanSquares,
}: TwoWayTable): IntraclassCorrelations {
  const { samples: between, withinSamples: within, judges, error } = meanSquares;
  const ratio = (above: number, below: number) =>
    Math.abs(below) <= 1e-12 * (between + within + judges + error) ? null : above / below;
  return {
    icc11: ratio(between - within, between + (k - 1) * within),
    icc21: ratio(between - error, between + (k - 1) * error + (k * (judges - error)) / n),
    icc31: ratio(between - error, between + (k - 1) * error),
    icc1k: ratio(between - within, between),
    icc2k: ratio(between - error, between + (judges - error) / n),
    icc3k: ratio(between - error, between),
  };
}
