import { describe, expect, it } from 'vitest';
import { figuresOfRankSums, friedmanTest } from '../../core/panel/ranking.ts';
import { nemenyiDifference, rankingDifferences, rankSumLsd } from '../../core/panel/ranking-differences.ts';
import { compareOrders } from '../../core/panel/recap/order-comparison.ts';
import { friedmanCritical, friedmanExactP } from './friedman-tables.ts';
import { expectPublished, type PublishedCase, unknownOperation } from './panel-cases.ts';
import published from './panel-ranking.json';

type Scores = (number | null)[][];
type Input =
  | { op: 'friedman'; scores: Scores }
  | { op: 'friedmanExactP'; k: number; n: number; chi2: number }
  | { op: 'friedmanCritical' | 'fisherLsdRankSums'; k: number; n: number }
  | { op: 'friedmanFromRankSums'; rankSums: number[]; n: number }
  | { op: 'fisherLsdPairs'; rankSums: number[]; n: number; alpha: number }
  | { op: 'nemenyiCD'; n: number; k: number; alpha: number }
  | { op: 'rankOrder'; scores: number[][]; better: 'lower' | 'higher' };

/** Large enough for every row of the printed tables; the product itself gives up much earlier. */
const TABLE_BUDGET = 60_000_000;

const byLevel = (levels: readonly string[], figure: (alpha: number) => unknown) =>
  Object.fromEntries(levels.map((level) => [level, figure(Number(level))]));
const levelsOf = (expected: unknown) => Object.keys(expected ?? {});

function friedman(scores: Scores) {
  const test = friedmanTest(scores);
  switch (test.status) {
    case 'tested':
    case 'one-judge':
      return { ...test, p: test.pChiSquare, W: test.kendallW, usable: test.status === 'tested' };
    case 'all-tied':
      return { ...test, chi2: null, p: null, W: null, usable: false };
    case 'one-sample':
    case 'no-judges':
      return null;
    default:
      return test satisfies never;
  }
}

/** The places that the recap gives, in the order of the columns. */
function rankOrder(scores: number[][], better: 'lower' | 'higher') {
  const pours = (scores[0] ?? []).map((_, index) => index);
  const compared = compareOrders(scores, pours, { better });
  if (compared.status !== 'compared') return null;
  const inOrder = [...compared.figures.places].sort((one, other) => one.pour - other.pour);
  return {
    n: scores.length,
    rankSums: inOrder.map(({ rankSum }) => rankSum),
    places: inOrder.map(({ place }) => place),
  };
}

function reckon(input: Input, levels: readonly string[]): unknown {
  switch (input.op) {
    case 'friedman':
      return friedman(input.scores);
    case 'friedmanExactP':
      return friedmanExactP(input, TABLE_BUDGET);
    case 'friedmanCritical':
      return byLevel(levels, (alpha) => {
        const found = friedmanCritical({ ...input, alpha }, TABLE_BUDGET);
        return found.status === 'attainable' ? found : { critical: null, p: null };
      });
    case 'fisherLsdRankSums':
      return byLevel(levels, (alpha) => rankSumLsd({ ...input, alpha }));
    case 'fisherLsdPairs': {
      const { threshold, apart } = rankingDifferences(input.rankSums, input.n, {
        method: 'rank-sum-lsd',
        alpha: input.alpha,
      });
      return { lsd: threshold, apart };
    }
    case 'friedmanFromRankSums': {
      const { imanDavenport, ...figures } = figuresOfRankSums(input.rankSums, input.n);
      const panel = { n: input.n, k: input.rankSums.length };
      return {
        ...figures,
        ...imanDavenport,
        imanDavenportF: imanDavenport?.f,
        'nemenyiCD0.05': nemenyiDifference({ ...panel, alpha: 0.05 }).onMeanRanks,
        'nemenyiCD0.10': nemenyiDifference({ ...panel, alpha: 0.1 }).onMeanRanks,
      };
    }
    case 'nemenyiCD': {
      const { q, onMeanRanks, onRankSums } = nemenyiDifference(input);
      return { qAlpha: q, cdMeanRanks: onMeanRanks, cdRankSums: onRankSums };
    }
    case 'rankOrder':
      return rankOrder(input.scores, input.better);
    default:
      return unknownOperation(input);
  }
}

const cases = published.cases as unknown as (PublishedCase & { readonly input: Input })[];

describe('rankings, against published and independently computed values', () => {
  it.each(cases.map((each) => [each.name, each] as const))('%s', (_name, each) => {
    expectPublished(reckon(each.input, levelsOf(each.expected)), each);
  });

  // Demšar 2006, Table 5(a), from memory; recomputed there from the studentised range.
  const table = published.data.q_alpha_nemenyi;
  it.each(table.k.map((k, index) => [k, index] as const))('prints q for %d samples', (k, index) => {
    expect(nemenyiDifference({ n: 10, k, alpha: 0.05 }).q).toBeCloseTo(table['0.05'][index] ?? 0, 2);
    expect(nemenyiDifference({ n: 10, k, alpha: 0.1 }).q).toBeCloseTo(table['0.10'][index] ?? 0, 2);
  });

  it.each(published.data.friedmanTableMisprints)('is not led astray by a misprint: k=$k n=$n', (row) => {
    const found = friedmanCritical(row, TABLE_BUDGET);
    if (found.status !== 'attainable') expect.fail(found.status);
    expect(found.critical).toBeCloseTo(row.exact, 1);
    expect(Math.abs(found.critical - row.printed)).toBeGreaterThan(0.5);
  });
});
