import { describe, expect, it } from 'vitest';
import type { ClosingText } from '../../../shared/words/closing.ts';
import { foldings } from '../../../shared/words/fold.ts';
import type { WordDrink } from '../../../shared/words/load-words.ts';
import type { WordSheet } from '../../../shared/words/word-sheet.ts';
import { findable, inTerms } from '../../../shared/words/word-sheet.ts';
import { exportsOf, languagesOf, sheetIn } from '../../support/languages.ts';

const drinks: readonly WordDrink[] = ['spirit', 'wine', 'beer'];
const languages = languagesOf('shared/words');
const sheetsOf = (language: string): Promise<readonly WordSheet[]> =>
  Promise.all(drinks.map((drink) => sheetIn(language, drink)));
const byLanguage = await Promise.all(
  languages.map(async (language) => [language, await sheetsOf(language)] as const),
);
const sheets: readonly (readonly [WordDrink, string, WordSheet])[] = byLanguage.flatMap(([language, all]) =>
  all.flatMap((sheet, index) => {
    const drink = drinks[index];
    return drink === undefined ? [] : [[drink, language, sheet] as const];
  }),
);
const wordsOf = ({ board }: WordSheet) => Object.values(board.families).flat();

describe.each(sheets)('the word board for %s in %s', (_drink, _language, sheet) => {
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
    const texts = Object.values(sheet.text.words).flatMap(foldings);
    expect(new Set(texts).size).toBe(texts.length);
    expect(new Set(Object.values(sheet.text.families)).size).toBe(Object.keys(sheet.board.families).length);
    for (const { steps } of Object.values(sheet.text.marks)) expect(new Set(steps).size).toBe(5);
  });

  it('keeps words short enough for a button on a small phone', () => {
    for (const text of [...Object.values(sheet.text.words), ...Object.values(sheet.text.colours)]) {
      expect(text.length, text).toBeLessThanOrEqual(20);
    }
  });

  it('names colours in words that stand unbroken under a swatch, two to a row of 320 px', () => {
    for (const text of Object.values(sheet.text.colours))
      for (const word of text.split(/[\s-]/)) expect(word.length, text).toBeLessThanOrEqual(13);
  });

  it('judges sweetness, body and length, and what the drink is known for', () => {
    expect(sheet.board.marks).toEqual(expect.arrayContaining(['sweet', 'body', 'length']));
    expect(sheet.board.marks.length).toBeLessThanOrEqual(7);
  });

  it('names body and finish as the trade does where the host wants that, and each step with its mark', () => {
    const plain = sheet.text.marks;
    const trade = inTerms(sheet, 'trade').text.marks;
    expect(inTerms(sheet, 'plain').text.marks).toBe(plain);
    expect(Object.keys(trade)).toEqual(Object.keys(plain));
    for (const mark of ['body', 'length']) {
      expect(trade[mark]?.name).not.toBe(plain[mark]?.name);
      for (const step of trade[mark]?.steps ?? [])
        expect(step.toLowerCase()).toContain(trade[mark]?.name.toLowerCase());
    }
    for (const { steps } of Object.values(trade)) expect(new Set(steps).size).toBe(5);
    const steps = Object.values(trade).flatMap((mark) => mark.steps);
    expect(new Set(steps).size).toBe(steps.length);
  });

  it('can be found, every word of every sense', () => {
    const senses = ['nose', 'palate', 'finish'] as const;
    const found = new Set(senses.flatMap((sense) => findable(sheet, sense).map(({ code }) => code)));
    expect(found).toEqual(new Set(wordsOf(sheet)));
  });
});

describe.each(byLanguage)('a code that several drinks share, in %s', (_, ofLanguage) => {
  it('says the same in each, so that one notebook can hold them all', () => {
    const said = new Map<string, string>();
    for (const { text } of ofLanguage) {
      for (const [code, each] of Object.entries(text.words)) {
        expect(each, code).toBe(said.get(code) ?? each);
        said.set(code, each);
      }
    }
    expect(said.size).toBeGreaterThan(150);
  });

  it('says the same colour in each', () => {
    const said = new Map<string, string>();
    for (const { text } of ofLanguage) {
      for (const [code, each] of Object.entries(text.colours)) {
        expect(each, code).toBe(said.get(code) ?? each);
        said.set(code, each);
      }
    }
  });
});

describe.each(languages)('the closing pass in %s', (language) => {
  it('has words for thoughts, feelings and the review', async () => {
    const { closingText } = await exportsOf('shared/words', language, 'closing.ts');
    const closing = closingText as ClosingText;
    expect(Object.keys(closing.feelings)).toHaveLength(12);
    expect(closing.review.question).toMatch(/\?$/);
    expect(Object.values(closing.prompts).every((prompt) => prompt.endsWith('…'))).toBe(true);
  });
});
