import { describe, expect, it } from 'vitest';
import { type PourId, pourId, seatId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import type { NoteField, NoteValue } from '../../../shared/notes/entry.ts';
import { boardPages, glassesOnPage, notesOnPage, wordsOnPage } from '../../../shared/talk/board-pages.ts';
import type { BoardEntry, BoardNote, BoardPour } from '../../../shared/wire/board.ts';

const first = pourId('p1');
const entry = (field: NoteField, value: NoteValue): BoardEntry => ({ field, value });
const note = (name: string, sealed: BoardEntry[], more: Partial<BoardNote> = {}): BoardNote => ({
  seat: seatId(name),
  name,
  remote: false,
  oddGlass: null,
  sealed,
  addedLater: [],
  ...more,
});
const pourOf = (pour: PourId, ...notes: BoardNote[]): BoardPour => ({
  pour,
  drink: 'wine',
  sealedAt: epochMs(0),
  notes,
});
const pagesOf = (...notes: BoardNote[]) => boardPages({ pours: [pourOf(first, ...notes)] });

describe('pages of the board on the room screen', () => {
  it('show one glass and one sense each, in the order of the steps', () => {
    const pages = boardPages({
      pours: [
        pourOf(first, note('Ada', [entry('palate', 'hay'), entry('nose', 'pear')])),
        pourOf(pourId('p2')),
        pourOf(pourId('p3'), note('Bo', [entry('look', 'gold')])),
      ],
    });
    expect(pages.map(({ pour, shows }) => [pour, shows.part])).toEqual([
      ['p1', 'nose'],
      ['p1', 'palate'],
      ['p3', 'look'],
    ]);
  });

  it('count people and not strengths, and nothing that was put down once the talk had begun [Q3]', () => {
    const [page] = pagesOf(
      note('Ada', [entry('nose-words', { pear: 'strong', smoke: 'hint' })]),
      note('Bo', [entry('nose-words', { smoke: 'clear' })], {
        addedLater: [entry('nose-words', { pear: 'strong', honey: 'clear' })],
      }),
    );
    expect(page?.shows).toMatchObject({
      part: 'nose',
      counts: [
        { code: 'smoke', people: 2 },
        { code: 'pear', people: 1 },
      ],
    });
  });

  it('count colours with the look', () => {
    const [page] = pagesOf(note('Ada', [entry('colour', 'hay')]), note('Bo', [entry('colour', 'hay')]));
    expect(page?.shows).toEqual({ part: 'look', counts: [{ code: 'hay', people: 2 }], notes: [] });
  });

  it('hold what can be read from afar, and go on on another page', () => {
    const people = Array.from({ length: notesOnPage + 1 }, (_, index) =>
      note(`G${index}`, [
        entry('nose', `note ${index}`),
        entry(
          'nose-words',
          Object.fromEntries(Array.from({ length: 20 }, (_, w) => [`w${w}`, 'clear' as const])),
        ),
      ]),
    );
    const pages = pagesOf(...people);
    const shown = pages.flatMap(({ shows }) => ('notes' in shows ? shows.notes.map(({ name }) => name) : []));
    expect(pages).toHaveLength(3);
    expect(shown).toEqual(people.map(({ name }) => name));
    expect(pages.map(({ shows }) => 'counts' in shows && shows.counts.length)).toEqual([wordsOnPage, 0, 0]);
  });

  it('have few words and few notes side by side', () => {
    const [page, ...more] = pagesOf(
      note('Ada', [entry('nose', 'pear'), entry('nose-words', { smoke: 'hint' })]),
    );
    expect(more).toEqual([]);
    expect(page?.shows).toMatchObject({ counts: [{ code: 'smoke' }], notes: [{ name: 'Ada' }] });
  });

  it('mark what was added later [Q3]', () => {
    const [page] = pagesOf(note('Ada', [], { addedLater: [entry('finish', 'long after all')] }));
    expect(page?.shows).toMatchObject({ part: 'finish', notes: [{ sealed: '', later: 'long after all' }] });
  });

  it('say of an odd-one-out how many found it, from the picks that were shared', () => {
    const pick = (glass: number, guessed: boolean) => [entry('odd-one-out', { glass, guessed })];
    const pages = pagesOf(
      note('Ada', pick(2, false), { oddGlass: 2 }),
      note('Bo', pick(2, true), { oddGlass: 3 }),
      note('Cy', [entry('odd-one-out', null)], { oddGlass: 1 }),
    );
    expect(pages.map(({ shows }) => shows)).toEqual([{ part: 'odd-one-out', right: 1, of: 2, guesses: 1 }]);
  });

  it('spread the marks of a glass over their steps, after the palate', () => {
    const pages = pagesOf(
      note('Ada', [entry('structure', { sweet: 2, smoke: 5 }), entry('finish', 'long')]),
      note('Bo', [entry('structure', { sweet: 2 })], { addedLater: [entry('structure', { smoke: 1 })] }),
      note('Cy', [entry('structure', { sweet: 4 }), entry('palate', 'hay')]),
    );
    expect(pages.map(({ shows }) => shows.part)).toEqual(['palate', 'structure', 'finish']);
    expect(pages[1]?.shows).toEqual({
      part: 'structure',
      marks: [
        { code: 'sweet', people: [0, 2, 0, 1, 0] },
        { code: 'smoke', people: [0, 0, 0, 0, 1] },
      ],
    });
  });

  it('end with the places of the glasses that were ranked together, the best liked on top', () => {
    const ranked = (id: string, sealedAt: number, ...placed: (number | null)[]): BoardPour => ({
      ...pourOf(
        pourId(id),
        ...placed.map((place, index) => note(`G${index}`, place === null ? [] : [entry('place', place)])),
      ),
      sealedAt: epochMs(sealedAt),
    });
    const pages = boardPages({
      pours: [
        ranked('p1', 1, 3, 1, 3),
        ranked('p2', 1, 1, 2, null),
        ranked('p3', 9, 1),
        ranked('p4', 9, null),
      ],
    });
    expect(pages.map(({ shows }) => shows)).toEqual([
      {
        part: 'places',
        glasses: [
          {
            pour: 'p2',
            counts: [
              { place: 1, people: 1 },
              { place: 2, people: 1 },
            ],
          },
          {
            pour: 'p1',
            counts: [
              { place: 1, people: 1 },
              { place: 3, people: 2 },
            ],
          },
        ],
      },
      { part: 'places', glasses: [{ pour: 'p3', counts: [{ place: 1, people: 1 }] }] },
    ]);
    const many = Array.from({ length: glassesOnPage + 1 }, (_, index) => ranked(`m${index}`, 1, index + 1));
    expect(boardPages({ pours: many })).toHaveLength(2);
  });

  it('are none while nobody has shared', () => {
    expect(boardPages({ pours: [] })).toEqual([]);
    expect(pagesOf(note('Ada', [entry('nose', '  ')]))).toEqual([]);
  });
});
