import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { type UnnamedPage, UnnamedPages, unnamedKey } from '../../../server/live/unnamed-pages.ts';
import { ManualClock } from '../support/manual-clock.ts';

const [ash, birch] = [pourId('ash'), pourId('birch')];
const of = (seat: string, pour = ash): UnnamedPage => ({ seat: seatId(seat), pour });

let clock: ManualClock;
let given: UnnamedPage[];
let pages: UnnamedPages;
let shown: string[];
const look = (...open: (typeof ash)[]) => {
  shown = [...pages.lots(open, given)]
    .toSorted(([, one], [, other]) => (one < other ? -1 : 1))
    .map(([key]) => key);
  return shown;
};

beforeEach(() => {
  clock = new ManualClock();
  given = [];
  pages = new UnnamedPages(clock, () => look(ash));
});
afterEach(() => pages.stop());

describe('[Q9] pages without a name', () => {
  it('that were given before their talk opened lie there at once', () => {
    given = [of('noor'), of('tomas')];
    expect(look(ash).toSorted()).toEqual([of('noor'), of('tomas')].map(unnamedKey));
  });

  it('that are given while it is open wait for two more, so that no tap is seen to bring a page', async () => {
    look(ash);
    given = [of('noor')];
    expect(look(ash)).toEqual([]);
    await clock.advance(1000);
    given = [...given, of('tomas')];
    expect(look(ash)).toEqual([]);
    given = [...given, of('ilse')];
    expect(look(ash)).toHaveLength(3);
  });

  it('wait no longer than five seconds where nobody else comes: a small table is not left without words', async () => {
    look(ash);
    given = [of('noor')];
    look(ash);
    await clock.advance(4999);
    expect(shown).toEqual([]);
    await clock.advance(1);
    expect(shown).toEqual([unnamedKey(of('noor'))]);
  });

  it('wait for nobody when all have answered', () => {
    look(ash);
    given = [of('noor')];
    expect([...pages.lots([ash], given, true).keys()]).toEqual([unnamedKey(of('noor'))]);
  });

  it('do not bring each other by coming from one guest', () => {
    look(ash, birch);
    given = [of('noor'), of('noor', birch)];
    expect(look(ash, birch)).toEqual([]);
  });

  it('go at once when they are taken back, and wait like any other when they are given again', () => {
    given = [of('noor'), of('tomas')];
    look(ash);
    given = [of('tomas')];
    expect(look(ash)).toEqual([unnamedKey(of('tomas'))]);
    given = [of('noor'), of('tomas')];
    expect(look(ash)).toEqual([unnamedKey(of('tomas'))]);
  });

  it('lie in an order drawn anew for each talk and each glass, which says nothing of who sat down when', () => {
    const seats = ['noor', 'tomas', 'ilse', 'jonas', 'anna'];
    const orders = new Set<string>();
    const keys = new Set<string>();
    for (let talk = 0; talk < 20; talk += 1) {
      given = [];
      look();
      given = [...seats.map((seat) => of(seat)), ...seats.map((seat) => of(seat, birch))];
      const found = look(ash, birch);
      for (const pour of ['ash', 'birch']) {
        const ofPour = found.filter((key) => key.startsWith(`${pour} `));
        expect(ofPour).toHaveLength(5);
        orders.add(ofPour.map((key) => key.slice(pour.length)).join());
      }
      for (const lot of pages.lots([ash, birch], given).values()) keys.add(lot);
    }
    // Of 120 orders, 40 drawn: the chance that they are fewer than ten different ones is below one in a billion.
    expect(orders.size).toBeGreaterThan(9);
    expect(keys.size).toBe(200);
  });
});
