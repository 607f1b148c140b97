import { describe, expect, it } from 'vitest';
import { codesBetween } from '../../core/planning/serving/blind-codes.ts';
import { balanceOf, williamsSize } from '../../core/planning/serving/order-balance.ts';
import published from './orders.json';

interface Input {
  readonly op: string;
  readonly rows?: readonly (readonly number[])[];
  readonly n?: number;
  readonly from?: number;
  readonly to?: number;
}

function reckon({ op, rows = [], n = 0, from = 0, to = 0 }: Input): unknown {
  switch (op) {
    case 'designProperties':
      return balanceOf(rows);
    case 'williamsSize':
      return williamsSize(n);
    case 'threeDigitCodesAvailable':
      return codesBetween(from, to);
    default:
      throw new Error(`no reckoning for ${op}`);
  }
}

describe('serving orders against published designs and counts', () => {
  it.each(published.cases.map((each) => [`${each.name} (${each.source})`, each] as const))(
    '%s',
    (_, each) => {
      expect(reckon(each.input)).toEqual(each.expected);
    },
  );
});
