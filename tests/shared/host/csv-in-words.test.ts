import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvInWords } from '../../../host/recap/csv-in-words.ts';
import { type CsvCell, csvFormOf, writeCsv } from '../../../shared/csv/write-csv.ts';
import { notebookWords } from '../../../shared/language/en/notebook.ts';
import { recapWords } from '../../../shared/language/en/recap.ts';
import { recapCsvWords as words } from '../../../shared/language/en/recap-csv.ts';
import { closingText } from '../../../shared/words/en/closing.ts';

const names = {
  pour: (id: string) => `the pour ${id}`,
  word: (code: string) => `the word ${code}`,
  mark: (code: string) => `the mark ${code}`,
  colour: (id: string, code: string) => ({ word: `the colour ${code} of ${id}`, hex: null }),
};
const columns = ['section', 'glass', 'pour', 'guest', 'measure', 'value', 'n'];
const inWords = (...rows: readonly (readonly CsvCell[])[]): readonly (readonly string[])[] =>
  Papa.parse<string[]>(
    csvInWords(writeCsv([columns, ...rows]), names, (glass) => (glass === 1 ? 'ash' : '')).replace(
      /^\uFEFF/,
      '',
    ),
    { skipEmptyLines: true },
  ).data;

describe('the host’s table in the language of the page', () => {
  it('has headings, sections and measures in words, and every figure as it was', () => {
    expect(
      inWords(
        ['timing', null, null, null, 'planned s', 5400, null],
        ['timing of cues', null, null, null, 'ash/first/nose took s', 61.5, null],
        ['ranking 2', 1, 'Ash', null, 'rank sum', 9.5, 4],
        ['ranking', 1, 'Ash', null, 'ahead of birch', 1, 4],
        ['structure', 1, 'Ash', null, 'sweet step 3', 2, 4],
        ['odd one out: ash birch', null, null, null, 'p', 0.04, 6],
      ),
    ).toEqual([
      Object.values(words.columns),
      [words.sections.timing, '', '', '', words.measures['planned s'], '5400', ''],
      [words.sections['timing of cues'], '', '', '', words.tookFor('ash/first/nose'), '61.5', ''],
      [words.ranking('2'), '1', 'Ash', '', words.measures['rank sum'], '9.5', '4'],
      [words.sections.ranking, '1', 'Ash', '', words.ahead('the pour birch'), '1', '4'],
      [words.sections.structure, '1', 'Ash', '', words.stepOf('the mark sweet', '3'), '2', '4'],
      [words.oddOneOut('the pour ash, the pour birch'), '', '', '', 'p', '0.04', '6'],
    ]);
  });

  it('turns codes into words, and leaves what people wrote as they wrote it', () => {
    const written = 'tar: "strong", and more;\r\nsmoke';
    expect(
      inWords(
        ['ranking', null, null, null, 'method', 'friedman-exact', 4],
        ['ranking', null, null, null, 'limits', 'small-panel of-another-version', 4],
        ['words', 1, 'Ash', null, 'tar', 3, 4],
        ['notes', 1, 'Ash', 'Ada', 'nose', written, null],
        ['notes', 1, 'Ash', 'Ada', 'nose-words', 'tar: strong; own:Omas Keller: hint', null],
        ['notes added later', 1, 'Ash', 'Ada', 'colour', 'hay', null],
      ).map((row) => row.slice(4, 6)),
    ).toEqual([
      [words.columns.measure, words.columns.value],
      [words.measures.method, recapWords.methods['friedman-exact']],
      [words.measures.limits, `${words.limits['small-panel']}; of-another-version`],
      ['the word tar', '3'],
      [notebookWords.fields.nose, written],
      [
        notebookWords.fields['nose-words'],
        `the word tar: ${closingText.strengths.strong}; the word own:Omas Keller: ${closingText.strengths.hint}`,
      ],
      [notebookWords.fields.colour, 'the colour hay of ash'],
    ]);
  });

  it('has decimals and cells parted as the page’s region writes them, and every figure as it was', () => {
    const table = writeCsv([columns, ['ranking', 1, 'Ash', null, 'rank sum', 9.5, 4]]);
    const text = csvInWords(table, names, () => '', csvFormOf('de-DE'));
    const [, row] = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), {
      delimiter: ';',
      skipEmptyLines: true,
    }).data;
    expect(row?.slice(5)).toEqual(['9,5', '4']);
  });

  it('keeps a text from being taken for a formula', () => {
    expect(inWords(['notes', 1, 'Ash', 'Ada', 'nose', '=1+1', null])[1]?.[5]).toBe(
      Papa.parse<string[]>(writeCsv([['=1+1']]).replace(/^\uFEFF/, '')).data[0]?.[0],
    );
  });
});
