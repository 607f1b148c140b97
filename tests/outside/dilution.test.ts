import { describe, expect, it } from 'vitest';
import {
  densityFromAbv,
  densityFromMassFraction,
  massFractionFromAbv,
  waterInHundredVolumes,
} from '../../core/planning/strength/alcoholometry.ts';
import { blend } from '../../core/planning/strength/blending.ts';
import {
  abvAfterDrops,
  abvAfterWater,
  waterMassToReach,
  waterToReach,
} from '../../core/planning/strength/dilution.ts';
import type { Poured } from '../../core/planning/strength/ethanol.ts';
import { A, B, C } from '../../core/planning/strength/oiml-r22-coefficients.ts';
import { abvPercent, degreesCelsius, grams, massFraction, millilitres } from '../../core/units.ts';
import published from './dilution.json' with { type: 'json' };
import { answerOf, expectWithin, type PublishedCase } from './published-case.ts';

type Given = Record<string, number> & {
  op: string;
  additionsMl?: readonly number[];
  parts?: readonly { volumeMl: number; abv: number }[];
};

const value = (given: Given, key: string): number => given[key] ?? Number.NaN;
const strength = (given: Given, key = 'abv') => abvPercent(value(given, key));
const temperature = (given: Given) => degreesCelsius(given.tempC ?? 20);
const poured = (volumeMl: number, abv: number): Poured => ({
  volume: millilitres(volumeMl),
  strength: abvPercent(abv),
});
const drink = (given: Given, abv = 'abv') => poured(value(given, 'volumeMl'), value(given, abv));

/** How each kind of case is asked of the product. */
const methods: Record<string, (given: Given) => unknown> = {
  densityFromAbv: (given) => densityFromAbv(strength(given), temperature(given)),
  densityFromMassFraction: (given) =>
    densityFromMassFraction(massFraction(value(given, 'p')), temperature(given)),
  massFractionFromAbv: (given) => massFractionFromAbv(strength(given)),
  waterToReach: (given) => {
    const answer = waterToReach(drink(given, 'abvFrom'), strength(given, 'abvTo'));
    if (answer.kind !== 'add-water') return null;
    return {
      waterMl: answer.water,
      finalMl: answer.finalVolume,
      contractionMl: answer.contraction,
      naiveWaterMl: answer.naiveWater,
    };
  },
  waterParts: (given) => waterInHundredVolumes(strength(given), temperature(given)),
  waterMassToReach: (given) =>
    waterMassToReach(
      grams(value(given, 'massKg')),
      massFractionFromAbv(strength(given, 'abvFrom'), temperature(given)),
      massFractionFromAbv(strength(given, 'abvTo'), temperature(given)),
    ),
  abvAfterWater: (given) => {
    const mixture = abvAfterWater(drink(given), millilitres(value(given, 'waterMl')));
    return { abv: mixture.strength, finalMl: mixture.finalVolume };
  },
  abvAfterDrops: (given) => {
    const mixture = abvAfterDrops(drink(given), value(given, 'drops'), millilitres(value(given, 'dropMl')));
    return { abv: mixture.strength, waterMl: mixture.water, finalMl: mixture.finalVolume };
  },
  mixVolume: (given) => {
    const mixture = blend([poured(value(given, 'ethanolMl'), 100), poured(value(given, 'waterMl'), 0)]);
    return { finalMl: mixture.finalVolume };
  },
  sequentialWater: (given) => {
    const additions = given.additionsMl ?? [];
    const last = additions.reduce((before, added) => {
      const mixture = abvAfterWater(before, millilitres(added));
      return { volume: mixture.finalVolume, strength: mixture.strength };
    }, drink(given));
    return { abv: last.strength, sameAsSingleAdditionMl: additions.reduce((sum, each) => sum + each, 0) };
  },
  blend: (given) => {
    const mixture = blend((given.parts ?? []).map((part) => poured(part.volumeMl, part.abv)));
    return { abv: mixture.strength, finalMl: mixture.finalVolume };
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

  // Council Directive 76/766/EEC annex.
  it('carries the published coefficients to the last digit', () => {
    expect({ A, B, C }).toEqual({ A: published.data.A, B: published.data.B, C: published.data.C });
  });

  it('answers one addition of water as it answers several', () => {
    const once = abvAfterWater(poured(25, 60), millilitres(5)).strength;
    expectWithin(
      methods.sequentialWater?.({
        op: '',
        volumeMl: 25,
        abv: 60,
        additionsMl: [1, 2, 2],
      } as unknown as Given),
      { abv: once },
      1e-9,
    );
  });
});
