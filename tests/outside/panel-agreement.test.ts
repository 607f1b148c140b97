import { describe, it } from 'vitest';
import { cochranQ } from '../../core/panel/cochran-q.ts';
import { fleissKappa } from '../../core/panel/kappa.ts';
import { krippendorffAlpha, type ReliabilityData } from '../../core/panel/krippendorff-alpha.ts';
import { meanJaccard } from '../../core/panel/word-overlap.ts';
import published from './panel-agreement.json';
import { expectPublished, type PublishedCase, unknownOperation } from './panel-cases.ts';

type Input =
  | { op: 'cochranQ'; ticks: (number | null)[][] }
  | { op: 'fleissKappa'; counts: number[][] }
  | ({ op: 'krippendorffAlpha' } & ReliabilityData)
  | { op: 'meanJaccard'; sets: string[][] };

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
    case 'krippendorffAlpha': {
      const found = krippendorffAlpha(input);
      return found.status === 'agreement' ? found.alpha : null;
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
});
