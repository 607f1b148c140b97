import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { progressOf } from '../../../guest/keepsake/evening-progress.ts';
import { keepsakeCsv } from '../../../guest/keepsake/keepsake-csv.ts';
import { keepsakeJson } from '../../../guest/keepsake/keepsake-json.ts';
import { keepsakeMarkdown } from '../../../guest/keepsake/keepsake-markdown.ts';
import { type NoteEntry, type NoteField, type NoteValue, noteFields } from '../../../shared/notes/entry.ts';
import { inWords } from '../../../shared/notes/in-words.ts';
import { wordsToReview } from '../../../shared/notes/words-to-review.ts';
import type { Keepsake, KeepsakePour } from '../../../shared/wire/http.ts';
import { language, vocabularyOf } from './keepsake-words.ts';

const values: Readonly<Partial<Record<NoteField, NoteValue>>> = {
  look: '=HYPERLINK("http://example.test")',
  colour: 'amber',
  nose: 'wet, "slate"\nand <b>rope</b> 🪢',
  'nose-words': { pear: 'clear', 'own:salt/pepper': 'hint' },
  palate: 'שלום',
  structure: { sweet: 2, body: 4, 'of-another-version': 3 },
  liking: 9,
  place: 1,
  review: { pear: 'gone' },
  feelings: ['calm', 'playful'],
  thoughts: '-12 degrees outside',
};
const pour = (entries: readonly NoteEntry[], more: Partial<KeepsakePour> = {}): KeepsakePour => ({
  position: 1,
  pour: pourId('p1'),
  drink: 'spirit',
  code: '417',
  facts: {
    kind: 'named',
    id: pourId('p1'),
    drink: 'spirit',
    code: '417',
    name: 'Gorse Point',
    producer: null,
    region: null,
    country: null,
    style: null,
    ageYears: null,
    vintage: null,
    abv: 46,
    cask: null,
    sparkling: false,
    serve: null,
    link: 'https://example.test/gorse',
    story: null,
    photos: { front: null, back: null },
    reading: [{ title: 'On [moors] & stills', link: 'https://example.test/a?b=(c)>' }],
  },
  entries,
  truth: null,
  ...more,
});
const entriesOf = (some: typeof values): NoteEntry[] =>
  noteFields.flatMap((field) => {
    const value = some[field];
    return value === undefined
      ? []
      : [{ pour: pourId('p1'), field, value, revision: 1, savedAt: epochMs(1) }];
  });
const evening = (pours: readonly KeepsakePour[], more: Partial<Keepsake> = {}): Keepsake => ({
  title: 'Six from the sea',
  place: '',
  hostName: '',
  startsAt: null,
  timeZone: 'UTC',
  guest: 'Ingrid',
  drink: 'spirit',
  guess: null,
  pours,
  trials: [
    {
      trial: pourId('t1'),
      glasses: ['311', '577', '642'],
      picked: { glass: 2, guessed: true },
      odd: 3,
    },
  ],
  ...more,
});
const whole = evening([pour(entriesOf(values)), pour([], { position: 2, facts: null })]);

describe('the keepsake as a table', () => {
  const text = keepsakeCsv(whole, vocabularyOf, language);
  // Papa Parse as an independent reader of RFC 4180.
  const read = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { delimiter: ',' });
  const rows = read.data.slice(0, -1);
  const column = (name: string): string | undefined => rows[1]?.[rows[0]?.indexOf(name) ?? -1];

  it('is read by another library cell by cell, each row as long as the head', () => {
    expect(read.errors).toEqual([]);
    expect(rows).toHaveLength(4);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(text.endsWith('\r\n')).toBe(true);
  });

  it('has every field in words, and typed text as it was typed', () => {
    expect(column('Nose')).toBe(values.nose);
    expect(column('Palate')).toBe('שלום');
    expect(column('Colour')).toBe('amber');
    expect(column('Words for the nose')).toBe('pear (clear), salt/pepper (a hint)');
    expect(column('How much of each')).toBe('a touch sweet, full, of-another-version: 3');
    expect(column('Liking')).toBe('Like extremely');
    expect(column('Still in the glass?')).toBe('pear: gone');
    expect(column('Feelings')).toBe('calm, playful');
    expect(rows[3]?.join('|')).toContain(
      'You picked 577 of 311, 577, 642. It was a guess. The odd one was 642.',
    );
  });

  it('gives a spreadsheet nothing to reckon with', () => {
    expect(column('Look')).toBe(`'${values.look}`);
    expect(column('Thoughts')).toBe(`'${values.thoughts}`);
    for (const row of rows) for (const each of row) expect(each).not.toMatch(/^[=+\-@\t\r]/);
  });
});

describe('the keepsake as data', () => {
  it('has codes and words, and says which shape it has', () => {
    const data = JSON.parse(keepsakeJson(whole, vocabularyOf, language));
    expect(data.format).toBe(1);
    expect(data.pours[0].entries).toEqual(whole.pours[0]?.entries);
    expect(data.pours[0].inWords.liking).toBe('Like extremely');
    expect(data.pours[0].reading).toHaveLength(2);
    expect(data.trials[0]).toMatchObject({ odd: 3, picked: { glass: 2, guessed: true } });
  });
});

describe('the keepsake as Markdown', () => {
  it('lists what there is to read without letting a title or a link break out', () => {
    const text = keepsakeMarkdown(whole, vocabularyOf, language);
    expect(text).toContain('### To read at home');
    expect(text).toContain('- On \\[moors\\] \\& stills: <https://example.test/a?b=(c)%3E>');
    expect(text).toContain('- More about it: <https://example.test/gorse>');
    expect(text).toContain('### Liking\n\nLike extremely');
    expect(text).toContain('## Odd one out');
  });
});

describe('a value in words', () => {
  it('says each point of the liking scale, and knows no inherited words', () => {
    const vocabulary = vocabularyOf('spirit');
    const scale = Array.from({ length: 9 }, (_, index) => inWords('liking', index + 1, vocabulary));
    // Peryam and Pilgrim (1957), from memory: 1 dislike extremely, 5 neither, 9 like extremely.
    expect([scale[0], scale[4], scale[8]]).toEqual([
      'Dislike extremely',
      'Neither like nor dislike',
      'Like extremely',
    ]);
    expect(inWords('colour', 'constructor', vocabulary)).toBe('constructor');
    expect(inWords('structure', { constructor: 2 }, vocabulary)).toBe('constructor: 2');
  });
});

describe('the words to review', () => {
  it('stand from top to bottom, each once with its senses, and never more than can be answered', () => {
    const marks = {
      'nose-words': { pear: 'hint', tar: 'clear' },
      'palate-words': { pear: 'strong' },
      'finish-words': {},
    } as const;
    expect(wordsToReview((field) => marks[field])).toEqual([
      { code: 'pear', fields: ['nose-words', 'palate-words'] },
      { code: 'tar', fields: ['nose-words'] },
    ]);
    const many = Object.fromEntries(
      Array.from({ length: 60 }, (_, index) => [`word-${index}`, 'hint' as const]),
    );
    const others = Object.fromEntries(Object.keys(many).map((code) => [`other-${code}`, 'hint' as const]));
    expect(wordsToReview((field) => (field === 'nose-words' ? many : others))).toHaveLength(60);
    expect(wordsToReview(() => ({}))).toEqual([]);
  });
});

describe('the progress over evenings', () => {
  it('counts glasses and words, what is new, odd ones found, and what was liked best', () => {
    const first = evening([pour(entriesOf({ 'nose-words': { pear: 'hint' }, liking: 7 })), pour([])]);
    const second = evening([pour(entriesOf({ 'nose-words': { pear: 'hint', tar: 'hint' }, nose: 'x' }))], {
      trials: [
        { trial: pourId('t'), glasses: ['1', '2', '3'], picked: { glass: 1, guessed: false }, odd: 1 },
      ],
    });
    expect(progressOf([first, second])).toEqual([
      {
        glasses: 1,
        words: 1,
        fresh: 1,
        perGlass: 1,
        odd: { right: 0, of: 1 },
        guesses: null,
        best: ['Gorse Point'],
      },
      { glasses: 1, words: 2, fresh: 1, perGlass: 2, odd: { right: 1, of: 1 }, guesses: null, best: [] },
    ]);
  });

  it('bears an evening without pours, and none at all', () => {
    expect(progressOf([])).toEqual([]);
    expect(progressOf([evening([], { trials: [] })])).toEqual([
      { glasses: 0, words: 0, fresh: 0, perGlass: 0, odd: { right: 0, of: 0 }, guesses: null, best: [] },
    ]);
  });
});
