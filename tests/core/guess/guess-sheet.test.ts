import { describe, expect, it } from 'vitest';
import { askedFacts } from '../../../core/guess/asked-facts.ts';
import { guessSheet, isGuess, sheetFor, truthOf } from '../../../core/guess/guess-sheet.ts';
import { originOf, styleOf } from '../../../core/guess/trade-words.ts';
import { type PlanInput, planSchema } from '../../../core/tasting.ts';
import { epochMs } from '../../../core/units.ts';

const opened = epochMs(Date.UTC(2026, 10, 27));
const wines: NonNullable<PlanInput['pours']> = [
  {
    id: 'a',
    drink: 'wine',
    name: 'Plum Lane',
    style: 'Riesling trocken',
    country: 'Germany',
    region: 'Mosel',
    vintage: 2019,
    abv: 12,
    priceMinor: 1800,
  },
  {
    id: 'b',
    drink: 'wine',
    name: 'Tall Gate',
    style: 'Spätburgunder',
    country: 'Deutschland',
    region: 'Baden',
    vintage: 2016,
    abv: 13,
    priceMinor: 3400,
  },
  {
    id: 'c',
    drink: 'wine',
    name: 'Low Wall',
    style: 'Shiraz',
    country: 'Australia',
    region: 'Barossa Valley',
    vintage: 1938,
    abv: 14.5,
    priceMinor: 2600,
  },
];
const planOf = (more: PlanInput = {}) =>
  planSchema.parse({ drink: 'wine', blind: true, pours: wines, ...more });
const drawn = (draw: string, more: PlanInput = {}) => guessSheet(planOf(more), opened, draw) ?? {};

describe('what is asked', () => {
  it('is what the plan knows, but no price unless the host wants it', () => {
    expect(askedFacts(planOf())).toEqual(['style', 'origin', 'vintage', 'abv']);
    expect(askedFacts(planOf({ guess: { on: true, without: ['vintage'] } }))).toEqual([
      'style',
      'origin',
      'abv',
      'price',
    ]);
  });

  it('is of facts that half of the pours have, and one that stands empty is none', () => {
    const without = (ids: string) =>
      wines.map((pour) => (ids.includes(pour.id ?? '') ? { ...pour, style: '' } : pour));
    expect(askedFacts(planOf({ pours: without('a') }))).toContain('style');
    expect(askedFacts(planOf({ pours: without('ab') }))).not.toContain('style');
    const [first] = planOf({ pours: without('a') }).pours;
    expect(first && truthOf(first)).not.toHaveProperty('style');
  });

  it('is nothing in an open tasting, and nothing where the host wants none', () => {
    expect(askedFacts(planOf({ blind: false }))).toEqual([]);
    expect(askedFacts(planOf({ guess: { on: false } }))).toEqual([]);
  });

  it('is not what the theme tells', () => {
    expect(
      askedFacts(planOf({ theme: { kind: 'horizontal', by: 'producer', held: 'style' } })),
    ).not.toContain('style');
  });

  it('is not what most pours lack', () => {
    const [a, ...others] = wines;
    const pours = [a, ...others.map(({ vintage: _, ...rest }) => rest)].filter((each) => each !== undefined);
    expect(askedFacts(planOf({ pours }))).not.toContain('vintage');
  });
});

describe('words of the trade', () => {
  it('knows a style in English and German, and takes the longest that fits', () => {
    expect(styleOf('single malt, unpeated', 'spirit')).toBe('single-malt');
    expect(styleOf('Imperial Stout', 'beer')).toBe('imperial-stout');
    expect(styleOf('Weißburgunder', 'wine')).toBe('pinot-blanc');
    expect(styleOf('Grenache, Syrah, Mourvèdre', 'wine')).toBe('cuvee');
    expect(styleOf('something of the house', 'spirit')).toBe('own:something of the house');
  });

  it('finds country and region in either field', () => {
    expect(originOf({ country: 'Schottland', region: 'Isle of Islay' }, 'spirit')).toBe('scotland/islay');
    expect(originOf({ country: 'United Kingdom', region: 'Islay' }, 'spirit')).toBe('scotland/islay');
    expect(originOf({ region: 'Scotland' }, 'spirit')).toBe('scotland');
    expect(originOf({ country: 'Italien' }, 'wine')).toBe('italy');
    expect(originOf({ country: 'Japan', region: 'Fennmark hills' }, 'spirit')).toBe(
      'japan/own:Fennmark hills',
    );
    expect(originOf({ region: 'Fennmark a/b' }, 'spirit')).toBe('own:Fennmark a\u2044b');
    expect(originOf({}, 'wine')).toBeUndefined();
  });
});

describe('[Q12] what there is to choose from', () => {
  it('holds more than the evening’s own, at least twice as much', () => {
    const { style = [], origin = [] } = drawn('secret');
    const own = planOf().pours.map(truthOf);
    for (const truth of own) expect(style).toContain(truth.style);
    for (const truth of own) expect(origin).toContain(truth.origin);
    expect(style.length).toBeGreaterThanOrEqual(8);
    const sixteen = Array.from({ length: 16 }, (_, at) => ({
      ...wines[0],
      id: `p${at}`,
      drink: 'wine' as const,
      name: 'One',
      style: `House style ${at}`,
    }));
    expect(drawn('secret', { pours: sixteen }).style).toHaveLength(32);
  });

  it('shows every region of each country, so that none stands out', () => {
    const { origin = [] } = drawn('secret');
    for (const region of ['germany/pfalz', 'germany/nahe', 'australia/hunter-valley'])
      expect(origin).toContain(region);
  });

  it('is told by nothing but the secret which names were put beside', () => {
    const sets = ['one', 'two', 'three', 'four'].map((draw) => new Set(drawn(draw).style));
    const others = sets.map((set) =>
      [...set].filter((each) => !['riesling', 'pinot-noir', 'syrah'].includes(String(each))),
    );
    expect(new Set(others.map((each) => each.join())).size).toBeGreaterThan(1);
  });

  it('stands in an order of each seat’s own, and is the same set for all', () => {
    const sheet = drawn('secret');
    const [one, other] = ['seat-1', 'seat-2'].map((seat) => sheetFor(sheet, seat).style ?? []);
    expect(one).not.toEqual(other);
    expect(one?.toSorted()).toEqual(other?.toSorted());
    expect(sheetFor(sheet, 'seat-1').style).toEqual(one);
  });

  it('does not depend on the order of the pours', () => {
    const turned = guessSheet(planOf({ pours: wines.toReversed() }), opened, 'secret');
    expect(turned).toEqual(drawn('secret'));
  });

  it('has sliders with the range of the drink, whatever is poured', () => {
    const sheet = drawn('secret', { guess: { on: true, without: [] } });
    expect([sheet.vintage?.at(0), sheet.vintage?.at(-1)]).toEqual([1976, 2026]);
    expect([sheet.abv?.at(0), sheet.abv?.at(-1)]).toEqual([5, 23]);
    const dearer = wines.map((pour, at) => ({ ...pour, priceMinor: [1200, 9000, 4000][at] ?? 0 }));
    expect(drawn('secret', { guess: { on: true, without: [] }, pours: dearer }).price).toEqual(sheet.price);
    expect(sheet.price).toEqual(expect.arrayContaining([500, 1000, 1250, 5000, 10_000, 50_000]));
  });

  it('takes nothing for a guess that it does not offer', () => {
    const sheet = drawn('secret');
    expect(isGuess(sheet, { style: 'riesling', vintage: 2016, sure: 50 })).toBe(true);
    expect(isGuess(sheet, { style: 'own:rude words' })).toBe(false);
    expect(isGuess(sheet, { vintage: 1700 })).toBe(false);
    expect(isGuess(sheet, { age: 12 })).toBe(false);
    expect(isGuess({ vintage: [2000, 2001] }, { vintage: 2000, sure: 50 })).toBe(false);
  });
});
