import { describe, expect, it } from 'vitest';
import { fold } from '../../../shared/words/fold.ts';
import { loadClosingText, loadWords, type WordDrink } from '../../../shared/words/load-words.ts';
import type { WordSheet } from '../../../shared/words/word-sheet.ts';
import { findable } from '../../../shared/words/word-sheet.ts';

const drinks: readonly WordDrink[] = ['spirit', 'wine', 'beer'];
const sheets: readonly (readonly [WordDrink, WordSheet])[] = await Promise.all(
  drinks.map(async (drink) => [drink, await loadWords(drink)] as const),
);
const wordsOf = ({ board }: WordSheet) => Object.values(board.families).flat();

describe.each(sheets)('the word board for %s', (_, sheet) => {
  it('has families of 8 to 12 words, each word in one of them', () => {
    const families = Object.values(sheet.board.families);
    expect(families.length).toBeGreaterThanOrEqual(10);
    expect(families.length).toBeLessThanOrEqual(16);
    for (const words of families) {
      expect(words.length).toBeGreaterThanOrEqual(8);
      expect(words.length).toBeLessThanOrEqual(12);
    }
    expect(new Set(wordsOf(sheet)).size).toBe(wordsOf(sheet).length);
  });

  it('offers every family to some sense, and none twice to one', () => {
    const senses = Object.values(sheet.board.senses);
    expect(new Set(senses.flat())).toEqual(new Set(Object.keys(sheet.board.families)));
    for (const families of senses) expect(new Set(families).size).toBe(families.length);
  });

  it('asks about the mouth only once the drink is in it', () => {
    expect(sheet.board.senses.nose).not.toContain('mouth');
    expect(sheet.board.senses.nose).not.toContain('leaving');
    expect(sheet.board.senses.palate[0]).toBe('mouth');
    expect(sheet.board.senses.finish[0]).toBe('leaving');
  });

  it('uses codes that are safe in a path, a file and a line of CSV', () => {
    for (const code of [...wordsOf(sheet), ...sheet.board.swatches.map(({ word }) => word)]) {
      expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    }
  });

  it('says no two words, families or steps alike', () => {
    const texts = Object.values(sheet.text.words).map(fold);
    expect(new Set(texts).size).toBe(texts.length);
    expect(new Set(Object.values(sheet.text.families)).size).toBe(Object.keys(sheet.board.families).length);
    for (const { steps } of Object.values(sheet.text.marks)) expect(new Set(steps).size).toBe(5);
  });

  it('keeps words short enough for a button on a small phone', () => {
    for (const text of [...Object.values(sheet.text.words), ...Object.values(sheet.text.colours)]) {
      expect(text.length, text).toBeLessThanOrEqual(20);
    }
  });

  it('judges sweetness, body and length, and what the drink is known for', () => {
    expect(sheet.board.marks).toEqual(expect.arrayContaining(['sweet', 'body', 'length']));
    expect(sheet.board.marks.length).toBeLessThanOrEqual(7);
  });

  it('can be found, every word of every sense', () => {
    const senses = ['nose', 'palate', 'finish'] as const;
    const found = new Set(senses.flatMap((sense) => findable(sheet, sense).map(({ code }) => code)));
    expect(found).toEqual(new Set(wordsOf(sheet)));
  });
});

describe('a code that several drinks share', () => {
  it('says the same in each, so that one notebook can hold them all', () => {
    const said = new Map<string, string>();
    for (const [drink, { text }] of sheets) {
      for (const [code, each] of Object.entries(text.words)) {
        expect(each, `${code} for ${drink}`).toBe(said.get(code) ?? each);
        said.set(code, each);
      }
    }
    expect(said.size).toBeGreaterThan(150);
  });

  it('says the same colour in each', () => {
    const said = new Map<string, string>();
    for (const [drink, { text }] of sheets) {
      for (const [code, each] of Object.entries(text.colours)) {
        expect(each, `${code} for ${drink}`).toBe(said.get(code) ?? each);
        said.set(code, each);
      }
    }
  });
});

describe('the closing pass', () => {
  it('has words for thoughts, feelings and the review', async () => {
    const closing = await loadClosingText();
    expect(Object.keys(closing.feelings)).toHaveLength(12);
    expect(closing.review.question).toMatch(/\?$/);
    expect(Object.values(closing.prompts).every((prompt) => prompt.endsWith('…'))).toBe(true);
  });
});
