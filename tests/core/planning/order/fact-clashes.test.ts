import { describe, expect, it } from 'vitest';
import type { PourFacts } from '../../../../core/planning/order/axes/pour-facts.ts';
import { clashesOf } from '../../../../core/planning/order/fact-clashes.ts';

const codes = (facts: PourFacts) => clashesOf({ id: 'p', ...facts }).map(({ code }) => code);

describe('facts that clash', () => {
  it.each<[PourFacts, string[]]>([
    [{ drink: 'spirit', abv: 46, peat: 2, cask: 'sherry' }, []],
    [{ drink: 'spirit', abv: 4.8 }, ['unusual-strength']],
    [{ drink: 'spirit', ibu: 40, sparkling: true }, ['not-of-this-drink', 'not-of-this-drink']],
    [{ drink: 'spirit', sparkling: false }, []],
    [{ drink: 'wine', colour: 'red', abv: 14, sugarGPerL: 2, marks: { dryness: 9 } }, []],
    [{ drink: 'wine', colour: 'red', abv: 19 }, ['strong-as-fortified']],
    [{ drink: 'wine', colour: 'red', abv: 19, fortified: true }, []],
    [{ drink: 'wine', abv: 40 }, ['unusual-strength', 'strong-as-fortified']],
    [{ drink: 'wine', sugarGPerL: 120, marks: { dryness: 9 } }, ['sugar-against-mark']],
    [{ drink: 'wine', sugarGPerL: 1, marks: { dryness: 1 } }, ['sugar-against-mark']],
    [{ drink: 'beer', abv: 12, sour: true, smoked: true }, []],
    [{ drink: 'beer', colour: 'red' }, ['not-of-this-drink']],
    [{ drink: 'beer', abv: Number.NaN }, ['unusual-strength']],
  ])('%j: %j', (facts, expected) => {
    expect(codes(facts)).toEqual(expected);
  });

  it('says which fact and which limits', () => {
    expect(clashesOf({ id: 'p', drink: 'beer', abv: 41, fortified: true })).toEqual([
      { code: 'not-of-this-drink', pour: 'p', fact: 'fortified' },
      { code: 'unusual-strength', pour: 'p', abv: 41, from: 0, to: 20 },
    ]);
  });
});
