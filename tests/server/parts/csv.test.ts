import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { writeCsv } from '../../../server/http/recap/csv.ts';

const read = (csv: string) => Papa.parse<string[]>(csv.slice(1), { newline: '\r\n' }).data.slice(0, -1);

describe('a table as CSV', () => {
  it('is read back by another reader as it was, but for the apostrophe', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ unit: 'grapheme' }), { minLength: 2, maxLength: 4 }), { minLength: 1 }),
        (rows) => {
          const back = read(writeCsv(rows));
          expect(
            back.map((row, y) => row.map((cell, x) => (cell === `'${rows[y]?.[x]}` ? cell.slice(1) : cell))),
          ).toEqual(rows);
        },
      ),
    );
  });

  // What a spreadsheet takes for the beginning of a formula (OWASP, CSV Injection, from memory).
  it.each(['=1', '+1', '-1', '@a', '\t1', '\r1', '\n=1', ' =1', '\u200B=1', '＝1'])('disarms %j', (typed) => {
    expect(writeCsv([[typed]]).slice(1)).toBe(`"'${typed}"\r\n`);
  });

  it('leaves numbers numbers, and what is none empty', () => {
    expect(writeCsv([[-1.5, Number.NaN, null, 'a']]).slice(1)).toBe('-1.5,,,"a"\r\n');
  });
});
