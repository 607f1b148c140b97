import { describe, expect, it } from 'vitest';
import { serviceTemperatures } from '../../core/drinks/service-temperature.ts';
import type { PlannedPour, PourFacts } from '../../core/planning/order/axes/pour-facts.ts';
import { wineCategoryOrder } from '../../core/planning/order/axes/wine.ts';
import { bestLineup, weighOrder } from '../../core/planning/order/lineup.ts';
import { neutralCodes } from '../../core/planning/serving/blind-codes.ts';
import published from './service-order.json';

interface Input {
  readonly op: string;
  readonly drink?: string;
  readonly source?: string;
  readonly first?: object;
  readonly second?: object;
}

const named = (each: { readonly name: string; readonly source: string }) => `${each.name} (${each.source})`;
const casesOf = (op: string) =>
  published.cases
    .filter((each) => each.input.op === op)
    .map((each) => [named(each), each.input as Input, each.expected] as const);

const asPour = (id: string, drink: string | undefined, facts: object | undefined): PlannedPour => ({
  ...({ drink, ...facts } as PourFacts),
  id,
});

describe('the order of two pours against handbooks and standards', () => {
  it.each(casesOf('serveBefore'))('%s', (_, { drink, first, second }, expected) => {
    // Ids chosen against the expectation, so that a tie can never pass for an answer.
    const [one, other] = expected === true ? ['z', 'a'] : ['a', 'z'];
    const pours = [asPour(one, drink, first), asPour(other, drink, second)];
    const best = bestLineup(pours);
    expect(best.steps[0]?.pour === one).toBe(expected);
    expect(best.cost).toBeLessThan(weighOrder(expected === true ? [...pours].reverse() : pours).cost);
  });
});

describe('the order of wine categories', () => {
  it.each(casesOf('categoryOrder'))('%s', (_, __, expected) => {
    expect(wineCategoryOrder).toEqual(expected);
  });

  it.each(casesOf('categoryOrder'))('orders wines that differ in nothing else: %s', (_, __, expected) => {
    const wines: readonly PourFacts[] = [
      { drink: 'wine', wineKind: 'mistelle' },
      { drink: 'wine', fortified: true, colour: 'red' },
      { drink: 'wine', wineKind: 'ice' },
      { drink: 'wine', wineKind: 'naturally-sweet' },
      { drink: 'wine', wineKind: 'film-yeast' },
      { drink: 'wine', colour: 'red' },
      { drink: 'wine', colour: 'red', sparkling: true },
      { drink: 'wine', colour: 'rose' },
      { drink: 'wine', colour: 'rose', sparkling: true },
      { drink: 'wine', colour: 'white' },
      { drink: 'wine', colour: 'white', sparkling: true },
    ];
    const letters = 'abcdefghijk';
    const pours = wines.map((facts, index) => ({ ...facts, id: letters[index] ?? '' }));
    const order = bestLineup(pours).steps.map(({ pour }) => pour);
    expect(order).toEqual([...letters].reverse());
    expect(order).toHaveLength((expected as readonly string[]).length);
  });
});

describe('serving temperatures', () => {
  it.each(casesOf('serviceTemperature'))('%s', (_, { drink, source }, expected) => {
    const found = Object.values(serviceTemperatures).find(
      ({ group, authority }) => group === drink && authority === source,
    );
    expect(found).toMatchObject(expected as object);
  });
});

describe('sample codes', () => {
  it('have three digits (ISO 13299:2016)', () => {
    expect(neutralCodes.every((code) => /^\d{3}$/.test(code))).toBe(true);
  });
});
