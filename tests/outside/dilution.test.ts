import { describe, expect, it } from 'vitest';
import {
  densityFromAbv,
  densityOfMixture,
  massFractionFromAbv,
} from '../../core/planning/strength/alcoholometry.ts';
import { afterDrops, afterWater, dropOfWater, waterToReach } from '../../core/planning/strength/dilution.ts';
import type { Poured } from '../../core/planning/strength/ethanol.ts';
import { abvPercent, millilitres } from '../../core/units.ts';
import published from './dilution.json' with { type: 'json' };
import { answerOf, expectWithin, type PublishedCase } from './published-case.ts';

type Given = Record<string, number> & { op: string; additionsMl?: readonly number[] };

const value = (given: Given, key: string): number => given[key] ?? Number.NaN;
const strength = (given: Given, key = 'abv') => abvPercent(value(given, key));
const poured = (volumeMl: number, abv: number): Poured => ({
  volume: millilitres(volumeMl),
  strength: abvPercent(abv),
});
const drink = (given: Given, abv = 'abv') => poured(value(given, 'volumeMl'), value(given, abv));

/** How each kind of case is asked of the product. */
const methods: Record<string, (given: Given) => unknown> = {
  densityFromAbv: (given) => densityFromAbv(strength(given)),
  densityFromMassFraction: (given) => densityOfMixture(value(given, 'p')),
  massFractionFromAbv: (given) => massFractionFromAbv(strength(given)),
  waterToReach: (given) => {
    const before = drink(given, 'abvFrom');
    const answer = waterToReach(before, strength(given, 'abvTo'));
    if (answer.kind !== 'add-water') return null;
    return {
      waterMl: answer.water,
      finalMl: answer.volume,
      contractionMl: before.volume + answer.water - answer.volume,
      // What cross-multiplying without the contraction would say.
      naiveWaterMl: before.volume * (before.strength / value(given, 'abvTo') - 1),
    };
  },
  abvAfterWater: (given) => {
    const mixture = afterWater(drink(given), millilitres(value(given, 'waterMl')));
    return { abv: mixture.strength, finalMl: mixture.volume };
  },
  abvAfterDrops: (given) => {
    expect(given.dropMl).toBe(dropOfWater);
    const mixture = afterDrops(drink(given), value(given, 'drops'));
    return {
      abv: mixture.strength,
      waterMl: mixture.reckoning[0]?.result.value,
      finalMl: mixture.volume,
    };
  },
  mixVolume: (given) => ({
    finalMl: afterWater(poured(value(given, 'ethanolMl'), 100), millilitres(value(given, 'waterMl'))).volume,
  }),
  sequentialWater: (given) => {
    const additions = given.additionsMl ?? [];
    const last = additions.reduce<Poured>(
      (before, added) => afterWater(before, millilitres(added)),
      drink(given),
    );
    return { abv: last.strength, sameAsSingleAdditionMl: additions.reduce((sum, each) => sum + each, 0) };
  },
};

describe('density and dilution against published values', () => {
  const cases = published.cases as readonly PublishedCase[];

  it.each(cases)('$name ($basis; $source)', ({ input, expected, tolerance }) => {
    const method = methods[input.op];
    if (method === undefined) throw new Error(`No method answers ${input.op}.`);
    expectWithin(
      answerOf(() => method(input as Given)),
      expected,
      tolerance,
    );
  });

  // Council Directive 76/766/EEC annex: the polynomial is the sum of its coefficients times powers.
  it('reckons with the published coefficients to the last digit', () => {
    for (const p of [0, 0.1, 0.4, 0.9, 1]) {
      const sum = published.data.A.reduce((total, each, power) => total + each * p ** power, 0);
      expect(densityOfMixture(p)).toBeCloseTo(sum, 9);
    }
  });

  it('answers one addition of water as it answers several', () => {
    const once = afterWater(poured(25, 60), millilitres(5)).strength;
    const given = { op: '', volumeMl: 25, abv: 60, additionsMl: [1, 2, 2] } as unknown as Given;
    expectWithin(methods.sequentialWater?.(given), { abv: once }, 1e-9);
  });
});
