import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold, foldings } from '../../../shared/words/fold.ts';
import { loadWords } from '../../../shared/words/load-words.ts';
import { searchWords, slipsToBeginning } from '../../../shared/words/search.ts';
import { findable } from '../../../shared/words/word-sheet.ts';
import { languagesOf, sheetIn } from '../../support/languages.ts';

const spirit = findable(await loadWords('spirit'), 'nose');
const codes = (query: string, limit?: number) => searchWords(spirit, query, limit).map(({ code }) => code);

const boards = await Promise.all(
  languagesOf('shared/words').flatMap((language) =>
    (['spirit', 'wine', 'beer'] as const).map(async (drink) => {
      const sheet = await sheetIn(language, drink);
      const all = (['nose', 'palate', 'finish'] as const).flatMap((sense) => findable(sheet, sense));
      return [
        language,
        drink,
        all.filter(({ code }, at) => all.findIndex((e) => e.code === code) === at),
      ] as const;
    }),
  ),
);

describe('finding a word', () => {
  it.each([
    ['vanilla', 'vanilla'],
    ['VANI', 'vanilla'],
    ['  vàn', 'vanilla'],
    ['smoke', 'peat-smoke'],
    ['smoky', 'peat-smoke'],
    ['apple', 'green-apple'],
    ['vanila', 'vanilla'],
    ['vnailla', 'vanilla'],
    ['carmel', 'caramel'],
    ['cinamon', 'cinnamon'],
    ['choclate', 'dark-chocolate'],
    ['lickorice', 'liquorice'],
    ['dark-choc', 'dark-chocolate'],
    ['peat/smoke', 'peat-smoke'],
  ])('takes %j for %s', (query, code) => {
    expect(codes(query)).toContain(code);
  });

  it('puts the whole word before its beginning, that before the middle, and slips last', () => {
    const entries = ['pine forest', 'pineapple', 'old pine', 'pine', 'pins'].map((text) => ({
      code: text,
      text,
    }));
    expect(searchWords(entries, 'pine').map(({ text }) => text)).toEqual([
      'pine',
      'pine forest',
      'pineapple',
      'old pine',
      'pins',
    ]);
  });

  it('finds all words of a family by its name', () => {
    expect(codes('hearth')).toEqual(
      expect.arrayContaining(['bonfire', 'peat-smoke', 'ash', 'soot', 'tar', 'bacon', 'charcoal']),
    );
  });

  it('forgives nothing in a query of three letters, and finds nothing for none', () => {
    expect(codes('asj')).toEqual([]);
    expect(codes('')).toEqual([]);
    expect(codes(' -/ ')).toEqual([]);
    expect(codes('zzzzzz')).toEqual([]);
  });

  it('keeps to the limit', () => {
    expect(codes('c', 3)).toHaveLength(3);
  });

  it('finds a part of a compound after all else, but none of three letters', () => {
    const entries = ['Torfrauch', 'Rauchware', 'alter Rauch'].map((text) => ({ code: text, text }));
    expect(searchWords(entries, 'rauch').map(({ text }) => text)).toEqual([
      'Rauchware',
      'alter Rauch',
      'Torfrauch',
    ]);
    expect(searchWords(entries, 'rau').map(({ text }) => text)).not.toContain('Torfrauch');
  });

  it.each(boards)(
    'finds any word in %s for %s by any beginning, first when it is whole',
    (_, _drink, all) => {
      fc.assert(
        fc.property(fc.constantFrom(...all), fc.integer({ min: 1, max: 20 }), (entry, length) => {
          expect(searchWords(all, entry.text.slice(0, length), 500)).toContain(entry);
          for (const typed of foldings(entry.text)) expect(searchWords(all, typed)[0]).toBe(entry);
          expect(searchWords(all, entry.text.toUpperCase())[0]).toBe(entry);
        }),
        { numRuns: 40 },
      );
    },
  );

  it.each(boards)(
    'finds any long word in %s for %s with two neighbouring letters swapped',
    (_, _drink, all) => {
      const long = all.filter(({ text }) => text.length >= 5 && !text.includes(' '));
      fc.assert(
        fc.property(fc.constantFrom(...long), fc.nat(), (entry, at) => {
          const index = 1 + (at % (entry.text.length - 2));
          const letters = [...entry.text];
          letters.splice(index, 2, letters[index + 1] ?? '', letters[index] ?? '');
          expect(searchWords(all, letters.join(''), 500)).toContain(entry);
        }),
        { numRuns: 40 },
      );
    },
  );

  it('never fails, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (query) => {
        expect(searchWords(spirit, query).length).toBeLessThanOrEqual(12);
      }),
    );
  });
});

describe('finding a German word', () => {
  it.each([
    ['grüner', 'green-apple'],
    ['GRÜNER APFEL', 'green-apple'],
    ['gruner ap', 'green-apple'],
    ['gruener apfel', 'green-apple'],
    ['gru\u0308ner', 'green-apple'],
    ['weissbrot', 'white-bread'],
    ['Weißbrot', 'white-bread'],
    ['haselnuss', 'hazelnut'],
    ['haselnuß', 'hazelnut'],
    ['holunderbluete', 'elderflower'],
    ['holunderblute', 'elderflower'],
    ['röstung', 'roast-stays'],
    ['roestung', 'roast-stays'],
    ['schokolade', 'milk-chocolate'],
    ['rauch', 'peat-smoke'],
    ['blüte', 'orange-blossom'],
    ['bluete', 'orange-blossom'],
    ['bäckerei', 'toast'],
    ['baeckerei', 'toast'],
    ['karamel', 'caramel'],
    ['lakriz', 'liquorice'],
  ])('takes %j for %s', async (query, code) => {
    const sheet = await sheetIn('de', 'beer');
    const all = (['nose', 'finish'] as const).flatMap((sense) => findable(sheet, sense));
    expect(searchWords(all, query).map((each) => each.code)).toContain(code);
  });
});

describe('counting slips', () => {
  it.each([
    ['', 'smoke', 0],
    ['smo', 'smoke', 0],
    ['smi', 'smoke', 1],
    ['msoke', 'smoke', 1],
    ['smmoke', 'smoke', 1],
    ['abc', '', 3],
  ])('from %j to the beginning of %j needs %i', (query, text, slips) => {
    expect(slipsToBeginning(query, text)).toBe(slips);
  });
});

describe('folding', () => {
  it.each([
    ['Crème Brûlée', 'creme brulee'],
    ['Weißbier', 'weissbier'],
    ['smørrebrød', 'smorrebrod'],
    ["Grandma's  shed", 'grandmas shed'],
    ['ΚΑΦΈΣ', 'καφεσ'],
    ['שָׁלוֹם', 'שלום'],
    ['हिन्दी', 'हिन्दी'],
    ['煙・木', '煙 木'],
    ['🍋', ''],
  ])('turns %j into %j', (text, folded) => {
    expect(fold(text)).toBe(folded.normalize('NFKD'));
  });

  it.each([
    ['Grüner Tee', ['gruner tee', 'gruener tee']],
    ['Öl', ['ol', 'oel']],
    ['A\u0308pfel', ['apfel', 'aepfel']],
    ['Weißbier', ['weissbier']],
    ['naïve', ['naive']],
    ['peat smoke', ['peat smoke']],
  ])('knows the ways to type %j', (text, ways) => {
    expect(foldings(text)).toEqual(ways);
  });

  it('changes nothing when done twice', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(fold(fold(text))).toBe(fold(text));
      }),
    );
  });
});
