import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { coloursSeen, oddPicks, placesGiven, wordsThatCameUp } from '../../../shared/talk/board-counts.ts';
import {
  shareOf,
  speakingOrder,
  talkNow,
  talkTime,
  turnNow,
  turnsPassed,
} from '../../../shared/talk/speaking-order.ts';
import type { BoardEntry, BoardNote, BoardSpeaker } from '../../../shared/wire/board.ts';
import { spiritSwatches } from '../../../shared/words/swatches.ts';

const speaker = (name: string, remote = false): BoardSpeaker => ({ seat: seatId(name), name, remote });
const tables = fc
  .uniqueArray(fc.string({ unit: fc.constantFrom(...'abcdefgh0123'), minLength: 4, maxLength: 10 }), {
    maxLength: 14,
  })
  .chain((names) => fc.tuple(...names.map((name) => fc.boolean().map((remote) => speaker(name, remote)))));

describe('the speaking order', () => {
  it('has everybody once, the same on every screen, whatever order the names came in', () => {
    fc.assert(
      fc.property(tables, fc.string(), (table, seed) => {
        const order = speakingOrder(table, seed);
        expect(order.map(({ seat }) => seat).toSorted()).toEqual(table.map(({ seat }) => seat).toSorted());
        expect(speakingOrder(table.toReversed(), seed)).toEqual(order);
      }),
    );
  });

  it('never ends with somebody at home while somebody is at the table', () => {
    fc.assert(
      fc.property(tables, fc.string(), (table, seed) => {
        const last = speakingOrder(table, seed).at(-1);
        expect(last?.remote === true && table.some(({ remote }) => !remote)).toBe(false);
      }),
    );
  });

  it('keeps the turns of the others when somebody comes late or leaves', () => {
    fc.assert(
      fc.property(tables, fc.string(), (table, seed) => {
        const here = table.map((each) => ({ ...each, remote: false }));
        const [late, ...others] = here;
        const without = speakingOrder(here, seed).filter(({ seat }) => seat !== late?.seat);
        expect(without).toEqual(speakingOrder(others, seed));
      }),
    );
  });

  it('is a fair lot: over many talks each of five speaks first about as often', () => {
    const table = ['ann', 'bo', 'cy', 'di', 'ed'].map((name) => speaker(name));
    const firsts = new Map<string, number>();
    for (let talk = 0; talk < 5000; talk += 1) {
      const first = speakingOrder(table, `${1_800_000_000_000 + talk * 61_000}/pour`)[0]?.name ?? '';
      firsts.set(first, (firsts.get(first) ?? 0) + 1);
    }
    // Chi-square with 4 degrees of freedom stays below 18.47 in 999 of 1000 fair draws (tables of the distribution).
    const chi = [...firsts.values()].reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(chi).toBeLessThan(18.47);
  });
});

describe('the clock of the talk', () => {
  const time = { from: 1000, until: 1000 + 240_000 };
  it('gives all the same share, goes through the order for each pour, and waits at the end', () => {
    expect(turnsPassed(0, time, 4)).toBe(0);
    expect(turnsPassed(1000 + 59_999, time, 4)).toBe(0);
    expect(turnsPassed(1000 + 60_000, time, 4)).toBe(1);
    expect(turnsPassed(1000 + 130_000, time, 4, 2)).toBe(4);
    expect(turnsPassed(9_999_999, time, 4, 2)).toBe(7);
    expect(shareOf(time, 4)).toBe(60);
    expect(shareOf(time, 7)).toBe(30);
    expect(shareOf(time, 200)).toBe(10);
  });
  it('bears an empty table and a talk without time', () => {
    expect(turnsPassed(0, time, 0)).toBe(-1);
    expect(turnsPassed(5, { from: 5, until: 5 }, 3)).toBe(2);
  });
});

describe('the talk that is on', () => {
  const opened = (pour: string, at: number) => ({ pour: pourId(pour), sealedAt: epochMs(at) });
  it('is about the boards that were opened last, the same for screens that list them in other orders', () => {
    const open = [opened('cedar', 5), opened('ash', 9), opened('birch', 9)];
    const same = { seed: '9/ash', pours: 2, openedAt: 9 };
    expect(talkNow(open)).toEqual({ ...same, glasses: ['ash', 'birch'] });
    expect(talkNow(open.toReversed())).toEqual({ ...same, glasses: ['birch', 'ash'] });
    expect(talkNow([])).toBeNull();
  });
  it('says who speaks about now and who then, and nobody when it is over or held', () => {
    const talk = { seed: '9/ash', pours: 1, glasses: [pourId('ash')], openedAt: 1000 };
    const clock = { kind: 'running', startsAt: epochMs(0), endsAt: epochMs(121_000) } as const;
    const time = talkTime(talk, clock);
    if (time === null) throw new Error('It runs.');
    expect(time).toEqual({ from: 1000, until: 121_000 });
    const table = ['ann', 'bo'].map((name) => speaker(name));
    const ash = { pour: pourId('ash'), drink: 'wine', sealedAt: epochMs(1000), notes: [] } as const;
    const board = { version: 1, table, pours: [ash] };
    const [first, second] = speakingOrder(table, '1000/ash');
    expect(turnNow(board, clock, 2000)).toEqual({ speaking: first, next: second, glass: ash.pour });
    expect(turnNow(board, clock, 62_000)).toEqual({ speaking: second, next: first, glass: ash.pour });
    expect(turnNow(board, clock, 121_000)).toBeNull();
    expect(turnNow({ ...board, table: table.slice(1) }, clock, 2000)).toBeNull();
    expect(turnNow(board, null, 2000)).toBeNull();
    expect(turnNow({ ...board, pours: [] }, clock, 2000)).toBeNull();
    expect(turnNow(null, clock, 2000)).toBeNull();
    expect(talkTime(talk, { kind: 'held', startsAt: epochMs(0), remaining: durationMs(1) })).toBeNull();
    expect(talkTime(talk, null)).toBeNull();
  });
});

const note = (name: string, sealed: readonly BoardEntry[], more: Partial<BoardNote> = {}): BoardNote => ({
  ...speaker(name),
  oddGlass: null,
  sealed,
  addedLater: [],
  ...more,
});

describe('what came up', () => {
  it('counts people, not taps, and nothing that was added after the talk began [Q3]', () => {
    const notes = [
      note('ann', [
        { field: 'nose-words', value: { pear: 'hint', 'own:wet/dog': 'strong' } },
        { field: 'palate-words', value: { pear: 'clear' } },
      ]),
      note('bo', [{ field: 'finish-words', value: { pear: 'hint' } }]),
      note('cy', [], { addedLater: [{ field: 'nose-words', value: { pear: 'hint', tar: 'hint' } }] }),
    ];
    const counts = wordsThatCameUp(notes).map(({ code, by }) => [code, by.map(({ name }) => name)]);
    expect(counts).toEqual([
      ['pear', ['ann', 'bo']],
      ['own:wet/dog', ['ann']],
    ]);
    expect(wordsThatCameUp(notes, ['nose-words']).map(({ by }) => by.length)).toEqual([1, 1]);
  });

  it('takes a word with a capital and without for one, as it was first written', () => {
    const notes = ['own:Räucherofen', 'own:räucherofen'].map((code, index) =>
      note(`guest ${index}`, [{ field: 'nose-words', value: { [code]: 'hint' } }]),
    );
    expect(wordsThatCameUp(notes).map(({ code, by }) => [code, by.length])).toEqual([['own:Räucherofen', 2]]);
  });

  it('lays the colours out from light to dark, with a code of another version at the end', () => {
    const notes = ['amber', 'hay', 'plaid', 'hay'].map((value, index) =>
      note(`guest ${index}`, [{ field: 'colour', value }]),
    );
    expect(coloursSeen(notes, spiritSwatches).map(({ code, by }) => [code, by.length])).toEqual([
      ['hay', 2],
      ['amber', 1],
      ['plaid', 1],
    ]);
  });

  it('says who put it where, and who found the odd one', () => {
    const pick = (glass: number, odd: number) =>
      note(`picks ${glass}`, [{ field: 'odd-one-out', value: { glass, guessed: glass === 3 } }], {
        oddGlass: odd,
      });
    expect(
      oddPicks([pick(1, 2), pick(3, 3)]).map(({ right, pick: { guessed } }) => [right, guessed]),
    ).toEqual([
      [true, true],
      [false, false],
    ]);
    const placed = [3, 1, 1].map((value, index) => note(`${index}`, [{ field: 'place', value }]));
    expect(placesGiven(placed).map(({ place }) => place)).toEqual([1, 1, 3]);
    // With a talk after each pour, the glasses are put in order only after that.
    const later = [{ field: 'place', value: 2 } as const];
    expect(placesGiven([note('late', [], { addedLater: later })]).map(({ place }) => place)).toEqual([2]);
    const changed = note('changed', [{ field: 'place', value: 1 }], { addedLater: later });
    expect(placesGiven([changed]).map(({ place }) => place)).toEqual([1]);
    expect([wordsThatCameUp([]), coloursSeen([], []), placesGiven([]), oddPicks([])]).toEqual([
      [],
      [],
      [],
      [],
    ]);
  });
});
