import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allergens } from '../../../core/drinks/allergens.ts';
import { lineupTable } from '../../../core/planning/pour-list/lineup-table.ts';
import { pourFromRow, readPourList } from '../../../core/planning/pour-list/pour-list.ts';
import { type Pour, pourSchema } from '../../../core/tasting.ts';
import { parseList } from '../../../host/plan/csv/parse-list.ts';
import { csvFormOf, writeCsv } from '../../../shared/csv/write-csv.ts';
import { planWords as german } from '../../../shared/language/de/plan.ts';
import { planWords as english } from '../../../shared/language/en/plan.ts';
import { listVocabulary } from '../../../shared/list-words/vocabulary.ts';

const spoilt = fc.constantFrom(
  '',
  '=',
  '+',
  '-',
  '@',
  "'",
  "'=",
  '\t',
  '"',
  ';',
  ',',
  '\n',
  '\uFEFF',
  '12',
  '＝',
);
const words = (most: number) =>
  fc
    .tuple(spoilt, fc.string({ unit: 'grapheme', maxLength: Math.floor(most / 6) }), spoilt)
    .map((parts) => parts.join('x'.repeat(parts[1].length % 2)));
const line = words(120).filter((text) => text.trim() !== '');
const id = fc.stringMatching(/^[A-Za-z0-9_-]{1,40}$/);
/** Nobody measures finer than a billionth; below 1e-12 a list writes 0. */
const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Number(value.toFixed(9)));
const optional = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });

/** Pours as the schema cleans them, with every field that a list may carry; an empty text counts as none. */
const pours = fc
  .uniqueArray(
    fc.record(
      {
        id,
        drink: fc.constantFrom('spirit', 'wine', 'beer'),
        name: line,
        producer: line,
        region: line,
        country: line,
        style: line,
        ageYears: between(0, 150),
        vintage: fc.integer({ min: 1700, max: 2200 }),
        abv: fc.oneof(between(0, 96), fc.constantFrom(0, 46.3, 1e-7, 12.345)),
        cask: line,
        peat: fc.integer({ min: 0, max: 3 }),
        colour: fc.constantFrom('white', 'rose', 'orange', 'red'),
        sparkling: fc.boolean(),
        wineKind: fc.constantFrom('film-yeast', 'naturally-sweet', 'ice', 'liqueur', 'mistelle'),
        body: fc.integer({ min: 1, max: 5 }),
        tannin: fc.integer({ min: 1, max: 5 }),
        sugarGPerL: between(0, 800),
        srm: between(0, 200),
        ibu: between(0, 1000),
        sour: fc.boolean(),
        smoked: fc.boolean(),
        marks: fc.record({ pungency: between(0, 10), dryness: between(0, 10) }),
        allergens: fc.subarray([...allergens], { minLength: 1 }),
        bottleMl: fc.oneof(between(0.001, 20_000), fc.constantFrom(700, 70, 44.361)),
        pourMl: between(0.001, 500),
        priceMinor: fc.integer({ min: 0, max: 100_000_000 }),
        link: fc.webUrl(),
        story: words(4000),
        hostNote: words(1000),
        photos: fc.record({ front: id, back: id }, { requiredKeys: ['front'] }),
      },
      { requiredKeys: ['id', 'drink', 'name'] },
    ),
    { maxLength: 16, selector: ({ id: own }) => own },
  )
  .map((drafts) => drafts.flatMap((draft) => asKept(draft)));

function asKept(draft: unknown): Pour[] {
  const parsed = pourSchema.safeParse(draft);
  if (!parsed.success) return [];
  const told = Object.entries(parsed.data).filter(
    ([, value]) => typeof value !== 'string' || value.trim() !== '',
  );
  const again = pourSchema.safeParse(Object.fromEntries(told));
  return again.success ? [again.data] : [];
}

const inLanguage = { en: english.list, de: german.list };

function roundTrip(
  given: readonly Pour[],
  currency: string,
  digits: number,
  language: 'en' | 'de',
): (Pour | undefined)[] {
  const text = writeCsv(
    lineupTable(
      { pours: [...given], flightSizes: [], currency },
      digits,
      inLanguage[language],
      csvFormOf(language).decimal,
    ),
    csvFormOf(language),
  );
  const { rows } = readPourList(parseList(text).lines, {
    drink: 'beer',
    currency,
    digits,
    ounce: 'us',
    words: listVocabulary,
  });
  return rows.map((row) => pourFromRow(row, String(row.facts.get('id')), 'beer'));
}

describe('a lineup as a list', () => {
  it('comes back identical', () => {
    fc.assert(
      fc.property(
        pours,
        optional(fc.constantFrom(['EUR', 2] as const, ['JPY', 0] as const, ['KWD', 3] as const)),
        fc.constantFrom('en' as const, 'de' as const),
        (given, money, language) => {
          const [currency, digits] = money ?? ['USD', 2];
          expect(roundTrip(given, currency, digits, language)).toEqual(given);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('names each flight', () => {
    const given = ['a', 'b', 'c', 'd', 'e'].map((each) =>
      pourSchema.parse({ id: each, drink: 'beer', name: each }),
    );
    const [head, ...lines] = lineupTable(
      { pours: given, flightSizes: [2, 3], currency: 'EUR' },
      2,
      german.list,
    );
    expect(head?.[0]).toBe('Flight');
    expect(lines.map(([flight]) => flight)).toEqual(['1', '1', '2', '2', '2']);
  });
});
