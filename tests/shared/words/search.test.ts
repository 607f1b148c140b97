import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from '../../../shared/words/fold.ts';
import { loadWords } from '../../../shared/words/load-words.ts';
import { searchWords, slipsToBeginning } from '../../../shared/words/search.ts';
import { findable } from '../../../shared/words/word-sheet.ts';

const spirit = findable(await loadWords('spirit'), 'nose');
const codes = (query: string, limit?: number) => searchWords(spirit, query, limit).map(({ code }) => code);

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

  it('finds any word by any beginning, first among all when it is written in full', () => {
    fc.assert(
      fc.property(fc.constantFrom(...spirit), fc.integer({ min: 1, max: 20 }), (entry, length) => {
        expect(searchWords(spirit, entry.text.slice(0, length), 500)).toContain(entry);
        expect(searchWords(spirit, entry.text)[0]).toBe(entry);
      }),
    );
  });

  it('finds any long word with two of its neighbouring letters swapped', () => {
    const long = spirit.filter(({ text }) => text.length >= 5 && !text.includes(' '));
    fc.assert(
      fc.property(fc.constantFrom(...long), fc.nat(), (entry, at) => {
        const index = 1 + (at % (entry.text.length - 2));
        const letters = [...entry.text];
        letters.splice(index, 2, letters[index + 1] ?? '', letters[index] ?? '');
        expect(searchWords(spirit, letters.join(''), 500)).toContain(entry);
      }),
    );
  });

  it('never fails, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (query) => {
        expect(searchWords(spirit, query).length).toBeLessThanOrEqual(12);
      }),
    );
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

  it('changes nothing when done twice', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(fold(fold(text))).toBe(fold(text));
      }),
    );
  });
});
