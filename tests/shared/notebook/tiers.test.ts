import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import {
  inserted,
  isTiedToAbove,
  lowered,
  placesOf,
  raised,
  type Tiers,
  tiersFrom,
  tieTurned,
} from '../../../shared/notes/tiers.ts';

const [a, b, c, d] = ['a', 'b', 'c', 'd'].map(pourId) as [never, never, never, never];
const text = (tiers: Tiers): string => tiers.map((tier) => tier.join('=')).join(' ');

describe('a ranking with ties', () => {
  it.each([
    ['raises over its neighbour', raised([[a], [b], [c]], c), 'a c b'],
    ['raises over a whole tie', raised([[a, b], [c]], c), 'c a=b'],
    ['raises out of a tie, in front of it', raised([[a], [b, c]], c), 'a c b'],
    ['lowers out of a tie, behind it', lowered([[a, b], [c]], a), 'b a c'],
    ['leaves the best where it is', raised([[a], [b]], a), 'a b'],
    ['leaves the last where it is', lowered([[a], [b]], b), 'a b'],
    ['ties a pour to the one above', tieTurned([[a], [b], [c]], b), 'a=b c'],
    ['ties a tie to the one above', tieTurned([[a], [b, c]], b), 'a=b=c'],
    ['parts a tie again', tieTurned([[a, b, c]], b), 'a b=c'],
    ['has nothing above the best to tie it to', tieTurned([[a], [b]], a), 'a b'],
    ['drops into a gap', inserted([[a], [b, c], [d]], d, 1), 'a d b=c'],
    ['drops below all', inserted([[a], [b]], a, 2), 'b a'],
    ['knows no stranger', raised([[a], [b]], d), 'a b'],
  ])('%s', (_what, tiers, expected) => expect(text(tiers)).toBe(expected));

  it('gives tied pours the same place, and the next one counts them all', () => {
    expect(placesOf([[a], [b, c], [d]]).map(({ place }) => place)).toEqual([1, 2, 2, 4]);
    expect(isTiedToAbove([[a], [b, c]], c)).toBe(true);
    expect(isTiedToAbove([[a], [b, c]], b)).toBe(false);
  });

  it('reads places with gaps, duplicates and none, and keeps every pour through any moves', () => {
    const pours = [a, b, c, d];
    expect(text(tiersFrom(pours, (pour) => ({ a: 9, b: 2, c: 2 })[pour as string] ?? null))).toBe('b=c a d');
    const moves = fc.array(fc.tuple(fc.constantFrom(raised, lowered, tieTurned), fc.constantFrom(...pours)));
    fc.assert(
      fc.property(moves, (made) => {
        const tiers = made.reduce<Tiers>((now, [move, pour]) => move(now, pour), [[a], [b], [c], [d]]);
        expect(tiers.flat().toSorted()).toEqual(pours);
        expect(tiers.every((tier) => tier.length > 0)).toBe(true);
        const place = new Map(placesOf(tiers).map((each) => [each.pour, each.place]));
        expect(text(tiersFrom(tiers.flat(), (pour) => place.get(pour) ?? null))).toBe(text(tiers));
      }),
    );
  });
});
