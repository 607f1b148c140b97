import { describe, expect, it } from 'vitest';
import { cueId, pourId, seatId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { shownTraits } from '../../../core/running-order/cue-traits.ts';
import type { ClockView } from '../../../core/session/views/stage.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import {
  pageByItself,
  pageShown,
  type ScreenMoment,
  type ScreenSource,
  screenPages,
} from '../../../shared/talk/screen-pages.ts';
import { speakingOrder, talkNow, turnNow, turnsClock } from '../../../shared/talk/speaking-order.ts';
import type { BoardNote, BoardView } from '../../../shared/wire/board.ts';

const [ash, birch, cedar] = ['ash', 'birch', 'cedar'].map(pourId) as [never, never, never];
const sealedAt = epochMs(1_000_000);
const table = ['ada', 'ben', 'cleo'].map((name) => ({ seat: seatId(name), name, remote: false }));
const wrote = (name: string): BoardNote => ({
  seat: seatId(name),
  name,
  remote: false,
  oddGlass: null,
  sealed: [{ field: 'nose', value: `pear, says ${name}` }],
  addedLater: [],
});
const boardOf = (...names: string[]): BoardView => ({
  version: 1,
  table,
  pours: [ash, birch].map((pour) => ({ pour, drink: 'wine', sealedAt, notes: names.map(wrote) })),
});
type Source = Omit<ScreenSource, 'results' | 'guesses'> & Partial<ScreenSource>;
const pagesFrom = (source: Source) => screenPages({ results: [], guesses: new Map(), ...source });
const idsOf = (source: Source): string[] => pagesFrom(source).map(({ id }) => id);
const talk = { kind: 'discussion', pours: [ash, birch] } as const;
const names = { kind: 'reveal', pours: [ash, birch, cedar] } as const;

describe('pages for the room\u2019s screens', () => {
  it('hold what is on the table glass by glass, then each person\u2019s page of each glass', () => {
    expect(idsOf({ cue: talk, named: [], board: boardOf('ada') })).toEqual([
      'ash/nose/all',
      'birch/nose/all',
      'person/ash/ada',
      'person/birch/ada',
    ]);
  });

  it('hold the card of a glass only where its name may be known [Q4]', () => {
    expect(idsOf({ cue: talk, named: [birch], board: boardOf('ada') })).toEqual([
      'ash/nose/all',
      'card/birch',
      'birch/nose/all',
      'person/ash/ada',
      'person/birch/ada',
    ]);
    // Told in an earlier round, and not on the table now.
    expect(idsOf({ cue: talk, named: [cedar], board: boardOf('ada') })).not.toContain('card/cedar');
    expect(idsOf({ cue: names, named: [], board: null })).toEqual([]);
  });

  it('begin at the names with each glass that was told and what is said of it, and then all of them [P21]', () => {
    expect(idsOf({ cue: names, named: [birch], board: null })).toEqual(['card/birch']);
    expect(idsOf({ cue: names, named: [ash, birch], board: boardOf('ada') })).toEqual([
      'card/ash',
      'ash/nose/all',
      'card/birch',
      'birch/nose/all',
      'names',
      'person/ash/ada',
      'person/birch/ada',
    ]);
  });

  it('hold what the room guessed behind the card of its glass, where three let it count [Q12]', () => {
    const fact = {
      truth: 12,
      guests: 3,
      spread: [],
      chance: 0.2,
      approximate: false,
      nearest: [],
    } as const;
    const facts = (['style', 'vintage', 'age', 'abv'] as const).map((each) => ({ ...fact, fact: each }));
    const told = { currency: 'EUR', counts: { counted: 3, of: 4 }, facts };
    const guesses = new Map([
      [ash, { ...told, pour: ash }],
      [birch, { ...told, pour: birch, counts: null, facts: [] }],
      [cedar, { ...told, pour: cedar }],
    ]);
    const named = [ash, birch];
    expect(idsOf({ cue: names, named, board: boardOf('ada'), guesses })).toEqual([
      'card/ash',
      'guesses/ash/style',
      'guesses/ash/abv',
      'ash/nose/all',
      'card/birch',
      'birch/nose/all',
      'names',
      'person/ash/ada',
      'person/birch/ada',
    ]);
    expect(idsOf({ cue: talk, named, board: boardOf(), guesses })).toEqual([
      'card/ash',
      'guesses/ash/style',
      'guesses/ash/abv',
      'card/birch',
    ]);
    // By itself the screen stays with the name: the guesses come when the host turns on.
    const pages = pagesFrom({ cue: names, named, board: null, guesses });
    const moment = {
      cue: { ...names, id: 'names' },
      turn: null,
    };
    expect(pageByItself(pages, { ...moment, justTold: [ash] })?.id).toBe('card/ash');
  });

  it('hold no person\u2019s page of what was put on the table without a name [Q9]', () => {
    const board = boardOf('ada');
    const unnamed = { ...wrote('ben'), seat: null, name: '' };
    const pours = board.pours.map((pour) => ({ ...pour, notes: [...pour.notes, unnamed] }));
    const ids = idsOf({ cue: talk, named: [], board: { pours } });
    expect(ids.filter((id) => id.startsWith('person/'))).toEqual(['person/ash/ada', 'person/birch/ada']);
  });

  it('hold no person\u2019s page of a glass that they only put in its place', () => {
    const placed = { ...wrote('ada'), sealed: [{ field: 'place', value: 1 } as const] };
    const pours = boardOf().pours.map((pour) => ({ ...pour, notes: [placed] }));
    const ids = idsOf({ cue: talk, named: [], board: { pours } });
    expect(ids.filter((id) => id.startsWith('person/'))).toEqual([]);
  });

  it('are known by one id each', () => {
    const ids = idsOf({ cue: names, named: [ash, birch], board: boardOf('ada', 'ben') });
    expect(new Set(ids).size).toBe(ids.length);
    // What the door lets in.
    for (const id of ids) expect(id).toMatch(/^[A-Za-z0-9_/:.-]{1,160}$/);
  });
});

it('hold each result that was told, once it was', () => {
  const told = { cue: cueId('evening/result'), at: sealedAt, parts: [] };
  const source = { cue: talk, named: [], board: boardOf('ada'), results: [told], guesses: new Map() };
  const pages = screenPages(source);
  expect(pages.map(({ id }) => id)).toContain('result/evening/result');
  const at = (id: string, kind: 'result' | 'discussion') =>
    pageByItself(pages, { cue: { id, kind }, justTold: [], turn: null })?.id;
  expect(at('evening/result', 'result')).toBe('result/evening/result');
  expect(at('flight-2/discussion', 'discussion')).toBe('ash/nose/all');
});

describe('[F8] the page that shows by itself', () => {
  const running = { kind: 'running', startsAt: sealedAt, endsAt: epochMs(sealedAt + 600_000) } as const;
  const byItself = (
    source: Source,
    { clock = running, justTold = [] }: Partial<Pick<ScreenMoment, 'justTold'> & { clock: ClockView }> = {},
    now: number = sealedAt,
  ) =>
    pageByItself(pagesFrom(source), {
      cue: { id: 'now', ...source.cue },
      justTold,
      turn: turnNow(
        source.board as BoardView | null,
        turnsClock(shownTraits({ ...source.cue, tells: [] } as unknown as Cue), clock),
        now,
      ),
    })?.id ?? null;

  it('is the glass whose name was told last, and all of them where one tap told several', () => {
    const source: Source = { cue: names, named: [ash, birch], board: null };
    expect(byItself(source, { justTold: [birch] })).toBe('card/birch');
    expect(byItself(source, { justTold: [ash] })).toBe('card/ash');
    expect(byItself(source, { justTold: [ash, birch] })).toBe('names');
    // Back at these names after others were told: all of them, and none twice.
    expect(byItself(source, { justTold: [cedar] })).toBe('names');
    expect(byItself({ ...source, named: [] })).toBeNull();
  });

  it('goes with the speaker, round by round, and with nothing else', () => {
    const board = boardOf('ada', 'ben', 'cleo');
    const known = talkNow(board.pours);
    if (known === null) throw new Error('The talk is open.');
    const order = speakingOrder(table, known.seed).map(({ seat }) => seat);
    const seen: (string | null)[] = [];
    for (let at = 0; at < 600_000; at += 1000) {
      const id = byItself({ cue: talk, named: [], board }, {}, sealedAt + at);
      if (seen.at(-1) !== id) seen.push(id);
      const turn = turnNow(board, running, sealedAt + at);
      expect(id).toBe(`person/${turn?.glass}/${turn?.speaking.seat}`);
    }
    expect(seen).toEqual([ash, birch].flatMap((pour) => order.map((seat) => `person/${pour}/${seat}`)));
  });

  it('is what the table has of that glass while somebody speaks who has shared nothing', () => {
    const board = boardOf('ada');
    const ids = Array.from({ length: 60 }, (_, at) =>
      byItself({ cue: talk, named: [], board }, {}, sealedAt + at * 10_000),
    );
    expect(new Set(ids)).toEqual(
      new Set(['ash/nose/all', 'birch/nose/all', 'person/ash/ada', 'person/birch/ada']),
    );
  });

  it('stands still when nobody\u2019s turn runs', () => {
    const source: Source = { cue: talk, named: [], board: boardOf('ada') };
    const held = { kind: 'held', startsAt: sealedAt, remaining: durationMs(5000) } as const;
    for (const at of [0, 100_000, 500_000])
      expect(byItself(source, { clock: held }, sealedAt + at)).toBe('ash/nose/all');
    expect(byItself(source, {}, sealedAt + 700_000)).toBe('ash/nose/all');
    // Nor where no clock gives turns: in a break, while names or a result are told, for that ends by the host's hand.
    for (const kind of ['break', 'result'] as const)
      expect(byItself({ ...source, cue: { kind, pours: [] } })).toBe('ash/nose/all');
  });

  it('gives way to the page that the host has chosen, for as long as that is there', () => {
    const pages = pagesFrom({ cue: talk, named: [], board: boardOf('ada') });
    const own = pages[0] ?? null;
    expect(pageShown(pages, 'person/birch/ada', own)?.id).toBe('person/birch/ada');
    expect(pageShown(pages, 'person/birch/ben', own)).toBe(own);
    expect(pageShown(pages, null, own)).toBe(own);
  });
});
