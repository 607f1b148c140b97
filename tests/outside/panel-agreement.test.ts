import { describe, expect, it } from 'vitest';
import { cochranQ } from '../../core/panel/cochran-q.ts';
import { cohenKappa, fleissKappa } from '../../core/panel/kappa.ts';
import { krippendorffAlpha, type ReliabilityData } from '../../core/panel/krippendorff-alpha.ts';
import { intraclassCorrelations, twoWayAnalysis, varianceRatios } from '../../core/panel/two-way-analysis.ts';
import { meanJaccard } from '../../core/panel/word-overlap.ts';
import published from './panel-agreement.json';
import { expectPublished, type PublishedCase, unknownOperation } from './panel-cases.ts';

type Input =
  | { op: 'cochranQ'; ticks: (number | null)[][] }
  | { op: 'fleissKappa'; counts: number[][] }
  | { op: 'cohenKappa'; table: number[][] }
  | ({ op: 'krippendorffAlpha' } & ReliabilityData)
  | { op: 'icc' | 'twoWayMeanSquares' | 'twoWayAnova'; scores: (number | null)[][] }
  | { op: 'meanJaccard'; sets: string[][] };

function analysed(scores: (number | null)[][]) {
  const table = twoWayAnalysis(scores);
  return table.status === 'analysed' ? table : null;
}

function reckon(input: Input): unknown {
  switch (input.op) {
    case 'cochranQ': {
      const test = cochranQ(input.ticks);
      return test.status === 'tested'
        ? { ...test, Q: test.q, p: test.pChiSquare }
        : { Q: null, p: null, pExact: null };
    }
    case 'fleissKappa': {
      const found = fleissKappa(input.counts);
      return found.status === 'one-category' ? { ...found, kappa: null } : found;
    }
    case 'cohenKappa': {
      const found = cohenKappa(input.table);
      return found.status === 'agreement' ? found.kappa : null;
    }
    case 'krippendorffAlpha': {
      const found = krippendorffAlpha(input);
      return found.status === 'agreement' ? found.alpha : null;
    }
    case 'icc': {
      const table = analysed(input.scores);
      return table === null ? null : intraclassCorrelations(table);
    }
    case 'twoWayMeanSquares': {
      const squares = analysed(input.scores)?.meanSquares;
      return {
        BMS: squares?.samples,
        WMS: squares?.withinSamples,
        JMS: squares?.judges,
        EMS: squares?.error,
      };
    }
    case 'twoWayAnova': {
      const table = analysed(input.scores);
      if (table === null) return null;
      const { samples, judges, dfError } = varianceRatios(table);
      return {
        Fsamples: samples.f,
        dfSamples: samples.df,
        pSamples: samples.p,
        Fjudges: judges.f,
        dfJudges: judges.df,
        pJudges: judges.p,
        dfError,
        MSerror: table.meanSquares.error,
      };
    }
    case 'meanJaccard': {
      const found = meanJaccard(input.sets);
      return found.status === 'overlap' ? found.meanJaccard : null;
    }
    default:
      return unknownOperation(input);
  }
}

const cases = published.cases as unknown as (PublishedCase & { readonly input: Input })[];

describe('agreement, against published and independently computed values', () => {
  it.each(cases.map((each) => [each.name, each] as const))('%s', (_name, each) => {
    expectPublished(reckon(each.input), each);
  });

  // Shrout and Fleiss 1979, as the cases' source prints them for their table of six drinks and four judges.
  it('finds the mean-of-judges forms of the same published table', () => {
    const first = cases.find((each) => each.name.startsWith('ICC single judge'));
    const forms = first === undefined ? null : reckon(first.input);
    expect(forms).toMatchObject({
      icc1k: expect.closeTo(0.44, 2),
      icc2k: expect.closeTo(0.62, 2),
      icc3k: expect.closeTo(0.91, 2),
    });
  });
});
