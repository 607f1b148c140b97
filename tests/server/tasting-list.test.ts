import { rmSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { type TastingId, tastingId } from '../../core/ids.ts';
import { compile } from '../../core/running-order/compile.ts';
import { noHabits } from '../../core/running-order/forecast.ts';
import { epochMs } from '../../core/units.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { Store, TastingRow } from '../../server/store/store.ts';
import type { ListedTasting, TastingPage } from '../../shared/wire/http.ts';
import { House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';
import { temporaryFolder } from './support/process.ts';

const evenings = 1000;
const folder = temporaryFolder();
const file = join(folder.path, 'quietpour.db');
/** How often each method of a shelf was asked. */
const asked = new Map<string, number>();
let house: House;
let store: Store;

const idOf = (number: number): TastingId => tastingId(`evening-${String(number).padStart(4, '0')}`);
const rowOf = (number: number): TastingRow => ({
  tasting: idOf(number),
  code: `T${String(number).padStart(5, '0')}`,
  plan: aPlan({
    title: number === 7 ? 'Rauch über Ærlingsø' : `Evening ${number}`,
    place: number === 11 ? 'Die alte Mühle' : 'The back room',
    hostName: number === 13 ? 'Zoë Brandvold' : 'Ines',
    // Half past midnight of the 15th where the host is, still the 14th in UTC.
    startsAt: number === 17 ? '2026-03-14T23:30:00Z' : '2025-10-01T18:00:00Z',
    timeZone: 'Europe/Berlin',
  }),
  revision: 1,
  // Two evenings each at one moment: the order among them holds too.
  createdAt: epochMs(1_700_000_000_000 + Math.floor(number / 2)),
});

function counted<Shelf extends object>(name: string, shelf: Shelf): Shelf {
  return new Proxy(shelf, {
    get(target, method) {
      const key = `${name}.${String(method)}`;
      asked.set(key, (asked.get(key) ?? 0) + 1);
      return Reflect.get(target, method);
    },
  });
}

beforeAll(async () => {
  const opened = openSqliteStore(file);
  await Promise.all(Array.from({ length: evenings }, (_, number) => opened.tastings.create(rowOf(number))));
  await openDoors(opened, 3);
  await openDoors(opened, 5);
  const finished = { type: 'TastingFinished', at: epochMs(1_770_000_000_000) } as const;
  await opened.sessions.append({ tasting: idOf(5), expected: 1, events: [finished] });
  store = {
    ...opened,
    tastings: counted('tastings', opened.tastings),
    sessions: counted('sessions', opened.sessions),
  };
  // Its check of all evenings is not what is counted here.
  house = await House.open({ store, clock: new ManualClock() });
  await vi.waitFor(() => expect(asked.get('sessions.read')).toBe(evenings), { timeout: 60_000 });
});
afterAll(async () => {
  await house.close();
  folder.remove();
});

async function openDoors(opened: Store, number: number): Promise<void> {
  const { tasting, plan } = rowOf(number);
  const opening = {
    type: 'DoorsOpened',
    plan,
    cues: compile(plan),
    habits: noHabits,
    guess: null,
    at: epochMs(1),
  } as const;
  await opened.sessions.append({ tasting, expected: 0, events: [opening] });
}

const listed = async (query: Record<string, string> = {}) =>
  await house.ask<TastingPage>('GET', `/api/tastings/list?${new URLSearchParams(query)}`, { key: houseKey });
const found = async (find: string): Promise<string[]> =>
  (await listed({ find })).body.tastings.map(({ tasting }) => tasting);

describe('the list of a thousand evenings', () => {
  it('answers a page at a time and reads neither a log nor a plan for it', async () => {
    asked.clear();
    const { status, body } = await listed();
    expect(status).toBe(200);
    expect(body.tastings.map(({ tasting }) => tasting).slice(0, 3)).toEqual([
      idOf(998),
      idOf(999),
      idOf(996),
    ]);
    expect(body.tastings).toHaveLength(20);
    expect(body.tastings[0]).toEqual({
      tasting: idOf(998),
      code: 'T00998',
      title: 'Evening 998',
      startsAt: '2025-10-01T18:00:00Z',
      stage: 'planned',
      createdAt: epochMs(1_700_000_000_499),
      finishedAt: null,
      pours: rowOf(0).plan.pours.length,
      guests: rowOf(0).plan.guests,
      trouble: null,
    } satisfies ListedTasting);
    expect(JSON.stringify(body).length).toBeLessThan(6000);
    expect([...asked.keys()].filter((each) => each.startsWith('sessions.'))).toEqual([]);
    expect(asked.get('tastings.page')).toBe(1);
    for (const whole of ['find', 'findByCode', 'list', 'unreadable'])
      expect(asked.get(`tastings.${whole}`), whole).toBeUndefined();
  });

  it('shows each of them once on the way to its end, also when some come and go meanwhile', async () => {
    const seen: string[] = [];
    let after: string | null = null;
    let pages = 0;
    do {
      const { body }: { body: TastingPage } = await listed(after === null ? {} : { after });
      seen.push(...body.tastings.map(({ tasting }) => tasting));
      after = body.next;
      pages += 1;
      // The last one of the page, which the next page goes on from, is deleted.
      if (pages === 2) await store.tastings.remove(tastingId(seen.at(-1) ?? ''));
      if (pages === 3)
        await store.tastings.create({
          ...rowOf(5000),
          code: 'NEWEST',
          createdAt: epochMs(1_800_000_000_000),
        });
    } while (after !== null);
    expect(pages).toBe(evenings / 20);
    expect(seen).toHaveLength(evenings);
    expect(new Set(seen).size).toBe(evenings);
  });

  it.each([
    ['a title, without its marks', 'rauch uber', 7],
    ['a title, with what stands for its marks', 'RAUCH UEBER aerlingso', 7],
    ['a place, in the middle of a word', 'ühle', 11],
    ['a host', 'zoe brand', 13],
    ['a day in figures, in the host’s zone', '15.3.2026', 17],
    ['a day with noughts', '15.03.', 17],
    ['a day as standards have it', '2026-03-15', 17],
    ['a day in English', '15 march', 17],
    ['a day in German', 'Sonntag März 2026', 17],
    ['a code', 't00019', 19],
    ['a stage', 'under way', 3],
    ['a stage in German', 'Beendet', 5],
    ['words from several of them', 'ines evening t00023 oktober', 23],
  ])('finds by %s', async (_, find, number) => {
    expect(await found(find)).toEqual([idOf(number)]);
  });

  it('finds nothing where one word is nowhere, and takes no sign for a command', async () => {
    expect(await found('ines nowhere')).toEqual([]);
    expect(await found('%')).toHaveLength(20);
    expect(await found('" OR 1=1 --')).toEqual([]);
    expect((await found('14.03.2026')).length).toBe(0);
  });

  it('goes on with a search from page to page', async () => {
    const first = (await listed({ find: 'back room' })).body;
    const second = (await listed({ find: 'back room', after: first.next ?? '' })).body;
    expect(second.tastings).toHaveLength(20);
    expect(first.tastings).not.toContainEqual(second.tastings[0]);
  });

  it('has those that cannot be read before all others, and where they belong, with why', async () => {
    const hurt = idOf(400);
    // As when one of its events is lost: the first is none.
    const event = { type: 'TastingFinished', at: epochMs(Number.NaN) } as const;
    await store.sessions.append({ tasting: hurt, expected: 0, events: [event] });
    expect(() => store.sessions.read(hurt)).toThrow();
    const trouble = { kind: 'event-unreadable', event: 1 };
    expect((await listed()).body.tastings[0]).toMatchObject({ tasting: hurt, trouble });
    const inPlace = (await listed({ find: 't00400' })).body.tastings;
    expect(inPlace).toMatchObject([{ tasting: hurt, trouble }]);
    await store.tastings.remove(hurt);
    expect((await listed()).body.tastings[0]).toMatchObject({ trouble: null });
  });

  it('is the house’s alone, and refuses what is no search', async () => {
    const made = await house.plan();
    const path = '/api/tastings/list';
    expect((await house.ask('GET', path, { key: made.hostKey })).status).toBe(403);
    expect((await house.ask('GET', path)).status).toBe(401);
    for (const query of ['after=7', 'after=7.', 'find=a&find=b', `find=${'a'.repeat(201)}`, 'limit=1000'])
      expect((await house.ask('GET', `${path}?${query}`, { key: houseKey })).status, query).toBe(400);
  });
});

describe('a summary', () => {
  it('follows the plan and the session as they are stored', async () => {
    const evening = await house.evening();
    const now = () => store.tastings.summary(evening.made.tasting);
    expect(now()).toMatchObject({ stage: 'under-way', finishedAt: null });
    await evening.host.host({ type: 'Finish' });
    expect(now()).toMatchObject({ stage: 'finished', finishedAt: expect.any(Number) });
    await evening.host.host({ type: 'Reopen' });
    expect(now()).toMatchObject({ stage: 'under-way', finishedAt: null });
    const { made } = { made: await house.plan() };
    const plan = aPlan({ title: 'Written anew', place: 'Elsewhere' });
    const path = `/api/tastings/${made.tasting}/plan`;
    await house.ask('PUT', path, { key: made.hostKey, body: { plan, base: 1 } });
    expect(await found('anew elsewhere')).toEqual([made.tasting]);
    expect(await found(`peat ${made.code}`)).toEqual([]);
  });

  it('is written for each evening of a file from before there were any', async () => {
    const old = join(folder.path, 'old.db');
    const before = openSqliteStore(old);
    for (const number of [3, 5, 7, 9]) await before.tastings.create(rowOf(number));
    await openDoors(before, 3);
    await openDoors(before, 5);
    const finished = { type: 'TastingFinished', at: epochMs(1_770_000_000_000) } as const;
    await before.sessions.append({ tasting: idOf(5), expected: 1, events: [finished] });
    const said = await before.tastings.page({ find: '', most: 10 });
    await before.close();
    const db = new SqliteDatabase(old);
    // As the migration leaves it.
    db.exec('DELETE FROM summaries');
    db.exec(
      "UPDATE tastings SET plan = replace(plan, '\"pours\":[', '\"pours\":[7,') WHERE tasting = 'evening-0009'",
    );
    db.close();
    const after = openSqliteStore(old);
    const unreadable = { ...said[0], startsAt: null, pours: 0, guests: expect.any(Number) };
    expect(await after.tastings.page({ find: '', most: 10 })).toEqual([unreadable, ...said.slice(1)]);
    await after.close();
    rmSync(old);
  });
});
