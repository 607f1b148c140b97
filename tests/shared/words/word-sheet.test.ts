import { describe, expect, it } from 'vitest';
import { strengths, tapAgain } from '../../../shared/words/closing.ts';
import { loadWords } from '../../../shared/words/load-words.ts';
import { codeFor, findable, textOf, wordKey } from '../../../shared/words/word-sheet.ts';
import { sheetIn } from '../../support/languages.ts';

const sheet = await loadWords('spirit');

describe('the code for what somebody wrote', () => {
  it("is the board's where the board has the word, however it is written", () => {
    expect(codeFor(sheet, ' Peat  SMOKE ')).toBe('peat-smoke');
    expect(codeFor(sheet, 'drying')).toBe('drying');
  });

  it('is the board’s in German with umlauts, without, and spelled out', async () => {
    const german = await sheetIn('de', 'spirit');
    for (const written of [
      'Grüner Apfel',
      'grüner  apfel',
      'gruner Apfel',
      'Gruener Apfel',
      'GRU\u0308NER APFEL',
    ])
      expect(codeFor(german, written), written).toBe('green-apple');
    expect(codeFor(german, 'Räucherofen')).toBe('own:Räucherofen');
    expect(codeFor(german, 'Rosé, süß')).toBe('own:Rosé, süß');
    expect(codeFor(german, 'Straße')).toBe('own:Straße');
  });

  it('is an own one elsewhere, the same for all who write the same', () => {
    expect(codeFor(sheet, 'crème  brûlée')).toBe('own:crème brûlée');
    const codes = ['Crème brûlée', 'CRÈME  BRÛLÉE'].map((written) => codeFor(sheet, written) ?? '');
    expect(new Set(codes.map(wordKey))).toEqual(new Set(['own:crème brûlée']));
    expect(codeFor(sheet, 'salt/pepper')).toBe('own:salt/pepper');
    expect(codeFor(sheet, 'constructor')).toBe('own:constructor');
    expect(codeFor(sheet, '__proto__')).toBe('own:__proto__');
  });

  it('is none where there is nothing to read, or too much', () => {
    for (const written of ['', '   ', '!!', '🍋', 'x'.repeat(41)])
      expect(codeFor(sheet, written)).toBeUndefined();
    expect(codeFor(sheet, 'x'.repeat(40))).toBe(`own:${'x'.repeat(40)}`);
    // What a phone takes the server takes: its limit of a code counts UTF-16 units.
    expect(codeFor(sheet, `x ${'🍋'.repeat(19)}`)).toBe(`own:x ${'🍋'.repeat(19)}`);
    expect(codeFor(sheet, `x ${'🍋'.repeat(20)}`)).toBeUndefined();
  });

  it('turns back into what to show', () => {
    expect(textOf(sheet, 'peat-smoke')).toBe('peat smoke');
    expect(textOf(sheet, 'own:old theatre')).toBe('old theatre');
    expect(textOf(sheet, 'of-another-version')).toBe('of-another-version');
    expect(textOf(sheet, 'constructor')).toBe('constructor');
  });
});

describe("the host's additions", () => {
  it('stand after the board, and not twice', () => {
    const found = findable(sheet, 'nose', ['Old theatre', 'vanilla', '']);
    expect(found.at(-1)).toEqual({ code: 'own:Old theatre', text: 'Old theatre' });
    expect(found.filter(({ text }) => text === 'vanilla')).toHaveLength(1);
  });
});

describe('tapping again', () => {
  it('makes a word stronger, then lays it down', () => {
    const tapped = [1, 2, 3, 4].reduce<(string | undefined)[]>(
      (seen) => [...seen, tapAgain(seen.at(-1) as (typeof strengths)[number] | undefined)],
      [undefined],
    );
    expect(tapped).toEqual([undefined, ...strengths, undefined]);
  });
});
