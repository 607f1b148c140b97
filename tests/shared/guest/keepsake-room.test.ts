import { describe, expect, it } from 'vitest';
import { cueId, pourId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { keepsakeHtml, text } from '../../../guest/keepsake/keepsake-html.ts';
import { keepsakeJson } from '../../../guest/keepsake/keepsake-json.ts';
import { keepsakeMarkdown } from '../../../guest/keepsake/keepsake-markdown.ts';
import { keepsakeInWords } from '../../../guest/keepsake/keepsake-text.ts';
import { guessWords } from '../../../shared/language/en/guess.ts';
import { resultWords } from '../../../shared/language/en/result.ts';
import type { Keepsake } from '../../../shared/wire/http.ts';
import { language, vocabularyOf } from './keepsake-words.ts';

const [ash, birch] = ['ash', 'birch'].map(pourId) as [never, never];
const figure = { place: 1, mean: 1.5, spread: [{ at: 1, guests: 2 }] };
const room: NonNullable<Keepsake['room']> = {
  results: [
    {
      cue: cueId('evening/result'),
      at: epochMs(1),
      parts: [
        {
          of: 'order',
          outcome: 'told',
          pours: [
            { ...figure, pour: birch },
            { pour: ash, place: 2, mean: null, spread: [] },
          ],
          counted: 4,
          given: 5,
          meaning: 'clear-favourite',
          luck: 0.02,
          party: true,
          tooFewToShow: false,
        },
        { of: 'liking', outcome: 'too-few', pours: [{ pour: ash }] },
      ],
    },
  ],
  guesses: [
    {
      pour: ash,
      counts: { counted: 4, of: 5 },
      currency: 'EUR',
      facts: [
        {
          fact: 'age',
          truth: 12,
          guests: 4,
          spread: [
            { value: 8, guests: 1 },
            { value: 12, guests: 3 },
          ],
          chance: 0.01,
          approximate: false,
          nearest: [],
        },
      ],
    },
    { pour: birch, counts: null, currency: 'EUR', facts: [] },
  ],
};
const keepsake = {
  title: 'Two <trees>',
  place: '',
  hostName: '',
  startsAt: null,
  timeZone: 'UTC',
  guest: 'Ada',
  drink: 'spirit',
  trials: [],
  guess: null,
  pours: [ash, birch].map((pour, at) => ({
    position: at + 1,
    pour,
    drink: 'spirit',
    code: null,
    facts:
      at === 0 ? { name: 'Ash <b>', photos: { front: null, back: null }, reading: [], link: null } : null,
    entries: [],
    truth: null,
  })),
  room,
} as unknown as Keepsake;

describe('what the room made of the evening, taken home', () => {
  it('stands glass by glass and result by result, as it was told', () => {
    const { pours, results } = keepsakeInWords(keepsake, vocabularyOf, language);
    const { line } = guessWords.room;
    const [said, of] = [guessWords.values.age, guessWords.facts.age];
    expect(pours[0]?.room[0]).toBe(guessWords.room.counts(4, 5));
    const spread = [[said(8), 1] as const, [said(12), 3] as const];
    expect(pours[0]?.room[1]).toContain(line(of, said(12), spread));
    // Of fewer than three nothing was told.
    expect(pours[1]?.room).toEqual([]);
    const named = 'Ash <b>';
    const unnamed = language.guest.glass.nth(2);
    expect(results.map(({ title }) => title)).toEqual([resultWords.titles.order, resultWords.titles.liking]);
    expect(results[0]?.said).toContain(unnamed);
    expect(results[0]?.rows).toEqual([
      resultWords.row.order(unnamed, resultWords.mean(1.5), 2, [{ at: resultWords.mean(1), guests: 2 }]),
      resultWords.rowTooFew(named),
      resultWords.counted.order(4, 5),
    ]);
    expect(results[1]).toMatchObject({ said: resultWords.tooFew.liking, rows: [] });
  });

  it('is in every file that people read, with what they typed as they typed it', () => {
    const { pours, results } = keepsakeInWords(keepsake, vocabularyOf, language);
    const lines = [...pours.flatMap((each) => each.room), ...results.flatMap(({ rows }) => rows)];
    const html = keepsakeHtml(keepsake, vocabularyOf, language, new Map());
    for (const line of lines) expect(html).toContain(text(line));
    expect(html).not.toContain('Ash <b>');
    const markdown = keepsakeMarkdown(keepsake, vocabularyOf, language);
    expect(markdown).toContain(`### ${guessWords.room.title}\n\n- ${guessWords.room.counts(4, 5)}\n- `);
    expect(markdown).toContain(`## ${resultWords.titles.order}`);
    expect(JSON.parse(keepsakeJson(keepsake, vocabularyOf, language))).toMatchObject({ room });
  });

  it('is nothing in what a device kept of an evening before', () => {
    const { room: _, ...before } = keepsake;
    const { pours, results } = keepsakeInWords(before, vocabularyOf, language);
    expect([...results, ...pours.flatMap((each) => each.room)]).toEqual([]);
    expect(keepsakeHtml(before, vocabularyOf, language, new Map())).not.toContain(guessWords.room.title);
  });
});
