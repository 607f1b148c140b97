import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { guarded, unguarded } from '../../../core/formula-guard.ts';
import { csvFormOf, writeCsv } from '../../../shared/csv/write-csv.ts';

/** Texts that somebody types to be run, among others that nobody means harm by. */
const piece = fc.oneof(
  fc.constantFrom(...'=+-@＝＋－＠\'";,\t\n\r \u00A0\u200B\uFEFF\u0000', 'x', '1', '- pear'),
  fc.string({ unit: 'grapheme', maxLength: 3 }),
);
const text = fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join(''));
const table = fc.array(fc.array(text, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 });

const signs = [...'=+-@＝＋－＠'];
const unseen = (char: string) => char === '"' || /[\s\p{C}]/u.test(char);
/** Whether a spreadsheet that passes over what cannot be seen, and over stray quotes, comes upon a formula's sign. */
const runs = (cell: string): boolean => signs.includes([...cell].find((char) => !unseen(char)) ?? '');

/** A reader that parts at every separator and line end, quotes or not: worse than any spreadsheet. */
const torn = (csv: string, separator: string): string[] =>
  csv.split(/[\r\n]/).flatMap((line) => line.split(separator));

describe('a table as CSV', () => {
  it('holds no formula, whichever separator a spreadsheet guesses', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const csv = writeCsv(rows);
        for (const delimiter of [',', ';', '\t']) {
          const read = Papa.parse<string[]>(csv, { delimiter }).data.flat();
          expect(read.filter(runs), JSON.stringify(delimiter)).toEqual([]);
        }
        for (const separator of [';', '\t']) expect(torn(csv, separator).filter(runs)).toEqual([]);
      }),
      { numRuns: 2000 },
    );
  });

  it('is read back by another reader as it was, but for the guard, and without the guard as it was', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const back = Papa.parse<string[]>(writeCsv(rows).slice(1), {
          delimiter: ',',
          newline: '\r\n',
        }).data.slice(0, -1);
        expect(back).toEqual(rows.map((row) => row.map(guarded)));
        expect(back.map((row) => row.map(unguarded))).toEqual(rows);
      }),
      { numRuns: 1000 },
    );
  });

  // What a spreadsheet takes for the beginning of a formula (OWASP, CSV Injection, from memory).
  it.each([
    ['=1', "'=1"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@a', "'@a"],
    ['\t=1', "\t'=1"],
    ['\n=1', "\n'=1"],
    [' =1', " '=1"],
    ['\u00A0=1', "\u00A0'=1"],
    ['\u200B=1', "\u200B'=1"],
    ['＝1', "'＝1"],
    ['x;=1+1', "x;'=1+1"],
    ['x\n- pear', "x\n'- pear"],
    ["'=1", "''=1"],
    ['a-b, -12 degrees', 'a-b, -12 degrees'],
    ['Orchard Wall', 'Orchard Wall'],
  ])('writes %j as %j', (typed, written) => {
    expect(writeCsv([[typed]])).toBe(`\uFEFF"${written}"\r\n`);
  });

  it('is written as a spreadsheet of the region opens it: no comma both parts cells and decimals', () => {
    // CLDR: German, French and Italian write a decimal comma, English and Swiss German a point.
    for (const locale of ['de-DE', 'de-AT', 'fr', 'it'])
      expect(csvFormOf(locale), locale).toEqual({ separator: ';', decimal: ',' });
    for (const locale of ['en-GB', 'en-US', 'de-CH'])
      expect(csvFormOf(locale), locale).toEqual({ separator: ',', decimal: '.' });
    const german = writeCsv([['a;b', 61.5, null, -0.25]], csvFormOf('de-DE'));
    expect(german).toBe('\uFEFF"a;b";61,5;;-0,25\r\n');
    expect(Papa.parse<string[]>(german.slice(1), { delimiter: ';' }).data[0]).toEqual([
      'a;b',
      '61,5',
      '',
      '-0,25',
    ]);
  });

  it('leaves numbers numbers, and what is none empty', () => {
    expect(writeCsv([[-1.5, Number.NaN, null, 'a "b"']])).toBe('\uFEFF-1.5,,,"a ""b"""\r\n');
  });
});
