import { describe, it } from 'vitest';
import { standingCautions } from '../../core/planning/strength/cautions.ts';
import {
  australianDay,
  canadianOccasion,
  guidanceMarks,
} from '../../core/planning/strength/drinking-guidance.ts';
import { ethanolInPour } from '../../core/planning/strength/ethanol.ts';
import { legalAges } from '../../core/planning/strength/legal-ages.ts';
import { nationalAdvice } from '../../core/planning/strength/national-advice.ts';
import {
  gramsPerDrink,
  standardDrinks,
  standardDrinksIn,
} from '../../core/planning/strength/standard-drinks.ts';
import { abvPercent, millilitres } from '../../core/units.ts';
import published from './drinking-guidance.json' with { type: 'json' };
import { expectWithin, type PublishedCase } from './published-case.ts';

type Given = Record<string, number | string>;

const britishWeek = guidanceMarks.find(({ id }) => id === 'gb-week');

function weeklyBritishUnits(given: Given): unknown {
  const pour = {
    volume: millilitres(Number(given.pourMl)),
    strength: abvPercent(Number(given.abv)),
  };
  const unitsPerPour = standardDrinksIn(ethanolInPour(pour), 'GB').drinks;
  return { unitsPerPour, pours: (britishWeek?.drinks.count ?? 0) / unitsPerPour };
}

/** Figures of our table that lie outside a published span; none should. */
function spanOf(values: readonly number[], [from = 0, to = 0]: readonly number[]): readonly number[] {
  const outside = values.filter((value) => value < from - 0.11 || value > to);
  return outside.length === 0 ? [from, to] : outside;
}

const daily = (of: 'women' | 'men') =>
  Object.values(nationalAdvice).flatMap((advice) => (advice.per === 'day' ? [advice[of]] : []));

const ageByPlace: Record<string, () => number | undefined> = {
  US: () => legalAges.US[0]?.age,
  UK: () => legalAges.GB[0]?.age,
  Japan: () => legalAges.JP[0]?.age,
  'Germany, spirits': () => legalAges.DE.find((rule) => rule.drinks === 'spirits')?.age,
  'Canada, Nunavut': () => legalAges.CA.find((rule) => rule.regions?.includes('CA-NU'))?.age,
  'Sweden, shops': () => legalAges.SE.find((rule) => rule.where === 'shops')?.age,
};

const said = (code: string): boolean =>
  standingCautions({ country: 'CA', shipsKits: true, withoutAlcohol: false }).some(
    (caution) => caution.code === code,
  );

/** Each of Canada's reasons for none at all, and the caution that says it. */
const cautionFor: Record<string, string> = {
  driving: 'nobody-drives-after-tasting',
  machinery: 'no-alcohol-with-dangerous-work',
  'medicines that interact': 'no-alcohol-with-medicines',
  'dangerous physical activity': 'no-alcohol-with-dangerous-work',
  'responsible for others': 'no-alcohol-when-others-depend-on-you',
  'important decisions': 'no-alcohol-before-important-decisions',
  pregnancy: 'no-alcohol-in-pregnancy',
};

/** How each fact is asked of the product. */
const facts: Record<string, (given: Given) => unknown> = {
  weeklyLimit: () => ({ units: britishWeek?.drinks.count }),
  poursInWeeklyLimit: weeklyBritishUnits,
  weeklyBands: () => ({
    maxPerOccasion: canadianOccasion.drinks.count,
    drinkG: canadianOccasion.ethanol / canadianOccasion.drinks.count,
  }),
  limits: () => ({
    dailyDrinks: australianDay.drinks.count,
    drinkG: australianDay.ethanol / australianDay.drinks.count,
    dailyG: australianDay.ethanol,
  }),
  dailyLimit: (given) => {
    // The table holds what is in force; the edition before it named numbers.
    const advice = given.edition === '2025-2030' ? nationalAdvice.US : undefined;
    return advice?.per === 'none' ? { menDrinks: null, womenDrinks: null } : { menDrinks: NaN };
  },
  range: () => ({
    // The British unit of 10 mL weighs 7.89 g, printed as 8.
    standardDrinkG: spanOf(
      (Object.keys(standardDrinks) as (keyof typeof standardDrinks)[]).map(gramsPerDrink),
      [8, 20],
    ),
    womenDailyG: spanOf(daily('women'), [10, 42]),
    menDailyG: spanOf(daily('men'), [10, 56]),
  }),
  calculationAdvice: () => ({ safeWayToCalculate: !said('no-sum-tells-when-to-drive') }),
  legalAge: (given) => ageByPlace[String(given.country)]?.(),
  zeroWhen: () => Object.keys(cautionFor).filter((reason) => said(cautionFor[reason] ?? '')),
};

describe('facts behind the cautions against what their bodies published', () => {
  const cases = published.cases as readonly PublishedCase[];

  it.each(cases)('$name ($basis; $source)', ({ input, expected, tolerance }) => {
    const given = input as unknown as Given;
    const fact = facts[String(given.key)];
    if (fact === undefined) throw new Error(`No fact answers ${given.key}.`);
    expectWithin(fact(given), expected, tolerance);
  });
});
