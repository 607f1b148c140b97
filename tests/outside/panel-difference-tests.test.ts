import { describe, it } from 'vitest';
import {
  criticalCorrect,
  type DifferenceTestMethod,
  distinguishers,
  exactP,
} from '../../core/panel/odd-one-out.ts';
import { TRIANGLE_ORDERS } from '../../core/panel/presentation-orders.ts';
import { expectPublished, type PublishedCase, unknownOperation } from './panel-cases.ts';
import published from './panel-difference-tests.json';

type Input =
  | { op: 'criticalCorrect'; method: DifferenceTestMethod; n: number }
  | { op: 'exactP'; method: DifferenceTestMethod; n: number; correct: number }
  | {
      op: 'distinguishers';
      method: Exclude<DifferenceTestMethod, 'paired-two-sided'>;
      n: number;
      correct: number;
      confidence: number;
      sides: 1 | 2;
    }
  | { op: 'triangleOrders' };

function reckon(input: Input, expected: unknown): unknown {
  switch (input.op) {
    case 'criticalCorrect':
      return Object.fromEntries(
        Object.keys(expected ?? {}).map((level) => [
          level,
          criticalCorrect(input.method, input.n, Number(level)),
        ]),
      );
    case 'exactP':
      return exactP(input.method, input.n, input.correct);
    case 'distinguishers': {
      const found = distinguishers(input.method, input, input);
      const suffix = `${input.confidence * 100}${input.sides === 1 ? 'OneSided' : 'TwoSided'}`;
      return {
        pc: found?.proportionCorrect,
        pd: found?.proportion,
        pdClamped: found?.proportionClamped,
        se: found?.standardError,
        [`lower${suffix}`]: found?.lower,
        [`upper${suffix}`]: found?.upper,
      };
    }
    case 'triangleOrders':
      return TRIANGLE_ORDERS;
    default:
      return unknownOperation(input);
  }
}

const cases = published.cases as unknown as (PublishedCase & { readonly input: Input })[];

describe('difference tests, against published tables and exact fractions', () => {
  it.each(cases.map((each) => [each.name, each] as const))('%s', (_name, each) => {
    expectPublished(reckon(each.input, each.expected), each);
  });
});
