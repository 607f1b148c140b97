import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeBetween, type Parts, withChange } from '../../../shared/wire/parts.ts';

const keys = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
const anyParts = fc
  .uniqueArray(fc.constantFrom(...keys), { maxLength: keys.length })
  .chain((order) => fc.tuple(...order.map((key) => fc.tuple(fc.constant(key), fc.nat(2)))))
  .map((entries): Parts<number> => new Map(entries));

describe('a view in parts', () => {
  it('[F2] is after a change what it was to become, in the same order, whatever comes, goes and moves', () => {
    fc.assert(
      fc.property(anyParts, anyParts, (from, to) => {
        expect([...withChange(from, changeBetween(from, to))]).toEqual([...to]);
      }),
      { numRuns: 2000 },
    );
  });

  it('[F2] gets there in slices of any size too', () => {
    fc.assert(
      fc.property(anyParts, anyParts, fc.array(fc.integer({ min: 1, max: 3 })), (from, to, sizes) => {
        let parts = from;
        for (const size of [...sizes, 1, 1, 1, 1, 1, 1, 1]) {
          const { gone, put } = changeBetween(parts, to);
          parts = withChange(parts, { gone, put: put.slice(0, size) });
        }
        expect([...parts]).toEqual([...to]);
      }),
      { numRuns: 2000 },
    );
  });

  it('sends one part when one changed, and names no place for it', () => {
    const from = new Map(keys.map((key) => [key, 1]));
    expect(changeBetween(from, new Map(from).set('c', 2))).toEqual({ gone: [], put: [['c', 2]] });
    expect(changeBetween(from, from)).toEqual({ gone: [], put: [] });
    expect(
      changeBetween(
        new Map([['b', 1]]),
        new Map([
          ['a', 1],
          ['b', 1],
          ['c', 1],
        ]),
      ),
    ).toEqual({
      gone: [],
      put: [
        ['a', 1, null],
        ['c', 1, 'b'],
      ],
    });
  });
});
