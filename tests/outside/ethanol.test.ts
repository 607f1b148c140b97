import { describe, expect, it } from 'vitest';
import { IMPERIAL_FLUID_OUNCE, US_FLUID_OUNCE } from '../../core/planning/figures/fluid-ounces.ts';
import { strengthCell } from '../../core/planning/pour-list/measured-cells.ts';
import { bottlesToBuy, poursPerBottle } from '../../core/planning/shopping/quantities.ts';
import { densityOfMixture } from '../../core/planning/strength/alcoholometry.ts';
import {
  ethanolInPour,
  ethanolInPours,
  gramsOfEthanol,
  type Poured,
} from '../../core/planning/strength/ethanol.ts';
import {
  drinksOfMass,
  gramsPerDrink,
  standardDrinksIn,
} from '../../core/planning/strength/standard-drinks.ts';
import { abvPercent, grams, millilitres } from '../../core/units.ts';
import published from './ethanol.json' with { type: 'json' };
import { answerOf, expectWithin, type PublishedCase } from './published-case.ts';

type Given = Record<string, number> & {
  op: string;
  country?: string;
  pours?: readonly { volumeMl: number; abv: number; count?: number }[];
};

const poured = (volumeMl = Number.NaN, abv = Number.NaN): Poured => ({
  volume: millilitres(volumeMl),
  strength: abvPercent(abv),
});

const eachPour = (given: Given): Poured[] =>
  (given.pours ?? []).flatMap((pour) =>
    Array.from({ length: pour.count ?? 1 }, () => poured(pour.volumeMl, pour.abv)),
  );

const value = (given: Given, key: string): number => given[key] ?? Number.NaN;
/** How each kind of case is asked of the product. */
const methods: Record<string, (given: Given) => unknown> = {
  ethanolDensity: () => densityOfMixture(1) / 1000,
  waterDensity: () => densityOfMixture(0) / 1000,
  ethanolInPour: (given) => {
    const { volume, mass } = ethanolInPour(poured(given.volumeMl, given.abv));
    return { ethanolMl: volume, ethanolG: mass };
  },
  standardDrinks: (given) =>
    drinksOfMass(ethanolInPour(poured(given.volumeMl, given.abv)).mass, grams(value(given, 'gramsPerDrink'))),
  gramsFromEthanolMl: (given) => gramsOfEthanol(millilitres(value(given, 'ethanolMl'))),
  ukUnits: (given) => standardDrinksIn(ethanolInPour(poured(given.volumeMl, given.abv)), 'GB').drinks,
  ukUnitsTotal: (given) => standardDrinksIn(ethanolInPours(eachPour(given)), 'GB').drinks,
  abvFromUsProof: (given) => {
    const read = strengthCell(`${value(given, 'proof')} proof`, undefined);
    return read.is === 'fact' ? read.fact : null;
  },
  usFlOzToMl: (given) => value(given, 'value') * US_FLUID_OUNCE,
  impFlOzToMl: (given) => value(given, 'value') * IMPERIAL_FLUID_OUNCE,
  mlToUsFlOz: (given) => value(given, 'value') / US_FLUID_OUNCE,
  mlToImpFlOz: (given) => value(given, 'value') / IMPERIAL_FLUID_OUNCE,
  poursPerBottle: (given) => {
    const bottle = millilitres(value(given, 'bottleMl'));
    const { fullPours, left } = poursPerBottle(bottle, millilitres(value(given, 'pourMl')));
    return { fullPours, leftMl: left };
  },
  bottlesNeeded: (given) => {
    const bought = bottlesToBuy({
      guests: value(given, 'guests'),
      poursPerGuest: 1,
      hostPours: 0,
      pour: millilitres(value(given, 'pourMl')),
      bottle: millilitres(value(given, 'bottleMl')),
      reserve: 0,
    });
    return bought.kind === 'bottles' ? { bottles: bought.bottles, totalMl: bought.poured } : null;
  },
  sessionEthanolPerGuest: (given) => {
    const ethanol = ethanolInPours(eachPour(given));
    return {
      ethanolMl: ethanol.volume,
      ethanolG: ethanol.mass,
      usDrinks: standardDrinksIn(ethanol, 'US').drinks,
      ukUnits: standardDrinksIn(ethanol, 'GB').drinks,
      au10g: standardDrinksIn(ethanol, 'AU').drinks,
    };
  },
};

describe('ethanol, standard drinks, proof, fluid ounces and bottles against published values', () => {
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

  // The grams of each row of the file, as keyed there; GB is a volume, 10 mL, usually rounded to 8 g.
  it('keeps the table of standard drinks', () => {
    const { UK_unit, WHO_AUDIT, ...countries } = published.data.standardDrinks_g;
    for (const [country, mass] of Object.entries({ ...countries, WHO: WHO_AUDIT })) {
      expect(gramsPerDrink(country as keyof typeof countries | 'WHO'), country).toBe(mass);
    }
    expect(Math.round(gramsPerDrink('GB'))).toBe(UK_unit);
  });
});
