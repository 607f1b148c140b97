import fc from 'fast-check';
import type { PlannedPour } from '../../../../core/planning/order/axes/pour-facts.ts';
import type { Drink } from '../../../../core/tasting.ts';

const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 3 });

/** Facts of every kind, each of them known or not; few values, so that ties do happen. */
const factsOf = (drink: Drink): fc.Arbitrary<Omit<PlannedPour, 'id'>> =>
  fc.record({
    drink: fc.constant(drink),
    abv: maybe(fc.constantFrom(5, 12, 13.5, 40, 46, 58.2)),
    ageYears: maybe(fc.integer({ min: 0, max: 30 })),
    vintage: maybe(fc.integer({ min: 1990, max: 2024 })),
    peat: maybe(fc.integer({ min: 0, max: 3 })),
    cask: maybe(fc.constantFrom('bourbon', 'sherry', 'steel', 'not a cask')),
    colour: maybe(fc.constantFrom('white' as const, 'rose' as const, 'red' as const)),
    sparkling: maybe(fc.boolean()),
    fortified: maybe(fc.boolean()),
    body: maybe(fc.integer({ min: 1, max: 5 })),
    tannin: maybe(fc.integer({ min: 1, max: 5 })),
    sugarGPerL: maybe(fc.constantFrom(0, 4, 20, 120)),
    srm: maybe(fc.constantFrom(3, 12, 40)),
    ibu: maybe(fc.constantFrom(10, 30, 70)),
    sour: maybe(fc.boolean()),
    smoked: maybe(fc.boolean()),
    marks: maybe(
      fc.record({ pungency: maybe(fc.integer({ min: 0, max: 10 })), dryness: maybe(fc.constant(5)) }),
    ),
    region: maybe(fc.constantFrom('North', 'South', 'Isle')),
    producer: maybe(fc.constantFrom('Elder Still', 'Hollow Hill')),
  });

export const plannedPours = (
  drink: Drink,
  minLength: number,
  maxLength: number,
): fc.Arbitrary<PlannedPour[]> =>
  fc
    .array(factsOf(drink), { minLength, maxLength })
    .map((all) => all.map((facts, index) => ({ ...facts, id: `pour-${index}` })));

export const anyLineup = (maxLength: number): fc.Arbitrary<PlannedPour[]> =>
  fc.constantFrom<Drink>('spirit', 'wine', 'beer').chain((drink) => plannedPours(drink, 0, maxLength));
