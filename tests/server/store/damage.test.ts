import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../../server/store/sqlite.ts';
import type { StoredPlan, TastingPage } from '../../../shared/wire/http.ts';
import { credentials } from '../support/device.ts';
import { House, houseKey } from '../support/house.ts';
import { ManualClock } from '../support/manual-clock.ts';
import { aPlan } from '../support/plans.ts';
import { temporaryFolder } from '../support/process.ts';

let folder: ReturnType<typeof temporaryFolder>;
let file: string;
beforeEach(() => {
  folder = temporaryFolder();
  file = join(folder.path, 'quietpour.db');
});
afterEach(() => folder.remove());

async function open(inThread = false) {
  const store = openSqliteStore(file, { inThread });
  const house = await House.open({ store, clock: new ManualClock() });
  return Object.assign(house, { store });
}
const listed = async (house: Pick<House, 'ask'>): Promise<TastingPage> => {
  const first = await house.ask<TastingPage>('GET', '/api/tastings/list', { key: houseKey });
  expect(first.status).toBe(200);
  const tastings = [...first.body.tastings];
  for (let next = first.body.next; next !== null; ) {
    const { body } = await house.ask<TastingPage>('GET', `/api/tastings/list?after=${next}`, {
      key: houseKey,
    });
    tastings.push(...body.tastings);
    next = body.next;
  }
  return { ...first.body, tastings };
};

describe('a row that reads and is not as it was written', () => {
  it('is told of its evening by the check, and of no other; a plan that is saved again is whole', async () => {
    const before = await open();
    const [hurt, whole] = [await before.evening(), await before.evening()];
    const planned = await before.plan();
    await hurt.host.close();
    await before.store.documents.save(hurt.made.tasting, 'pouring', { poured: {} }, 0);
    await before.close();
    const db = new SqliteDatabase(file);
    const { tasting } = hurt.made;
    expect(
      db.prepare("UPDATE keys SET opens = 0 WHERE tasting = ? AND role = 'seat'").run(tasting).changes,
    ).toBe(2);
    db.prepare("UPDATE documents SET body = '{}' WHERE tasting = ?").run(tasting);
    db.prepare("UPDATE tastings SET plan = replace(plan, 'patience', 'pathence')").run();
    db.prepare("UPDATE tastings SET plan = replace(plan, 'pathence', 'patience') WHERE tasting = ?").run(
      whole.made.tasting,
    );
    db.close();

    const house = await open();
    const after = new Map((await listed(house)).tastings.map((each) => [each.tasting, each.altered]));
    expect(after.get(tasting)?.toSorted()).toEqual(['links', 'plan', 'pour-run']);
    expect(after.get(planned.tasting)).toEqual(['plan']);
    expect(after.get(whole.made.tasting)).toBeUndefined();
    const path = `/api/tastings/${planned.tasting}/plan`;
    const { body } = await house.ask<StoredPlan>('GET', path, { key: houseKey });
    await house.ask('PUT', path, { key: houseKey, body: { plan: body.plan, base: body.revision } });
    for (let times = 0; times < 2; times += 1) {
      const now = await listed(house);
      expect(now.tastings.find((each) => each.tasting === planned.tasting)?.altered).toBeUndefined();
      house.store.check();
    }
    await house.close();
  });
});

describe('a damaged part of the file', () => {
  const evenings = 40;
  /** Lays the evenings and wipes one page of this table: a leaf, or what holds the leaves. */
  async function harmed(table: string, which: 'leaf' | 'internal'): Promise<readonly string[]> {
    const house = await open();
    const made: string[] = [];
    const story = 'x'.repeat(900);
    for (let count = 0; count < evenings; count += 1) {
      const { tasting } = await house.plan(aPlan({ title: `Evening ${count}`, welcome: story }));
      made.push(tasting);
    }
    await house.close();
    const db = new SqliteDatabase(file);
    const pages = db
      .prepare<[string, string], number>(
        'SELECT pageno FROM dbstat WHERE name = ? AND pagetype = ? ORDER BY pageno',
      )
      .pluck()
      .all(table, which);
    const size = Number(db.pragma('page_size', { simple: true }));
    db.close();
    const bytes = readFileSync(file);
    const page = pages[Math.floor(pages.length / 2)] ?? 0;
    expect(page).toBeGreaterThan(0);
    bytes.fill(0, (page - 1) * size, page * size);
    writeFileSync(file, bytes);
    return made;
  }

  it.each([
    ['tastings', 'leaf', 'here'],
    ['tastings', 'internal', 'here'],
    ['summaries', 'leaf', 'here'],
    ['summaries', 'leaf', 'in a thread'],
    ['summaries_of_house', 'leaf', 'in a thread'],
  ] as const)(
    '%s, %s, written %s: the list has every evening, and those that read go on',
    async (table, which, by) => {
      const made = await harmed(table, which);
      const house = await open(by === 'in a thread');
      house.store.check();
      for (const tasting of await house.store.tastings.ids()) {
        try {
          house.store.tastings.find(tasting);
        } catch {
          // Known from here on.
        }
      }
      const { tastings, damaged } = await listed(house);
      expect(damaged).toBe(true);
      expect(new Set(tastings.map(({ tasting }) => String(tasting)))).toEqual(new Set(made));
      const lost = tastings.filter(({ trouble }) => trouble).map(({ trouble }) => trouble?.kind);
      expect(new Set(lost)).toEqual(new Set(table === 'tastings' ? ['plan-unreadable'] : []));
      if (which === 'leaf') {
        expect(lost.length).toBeLessThan(evenings / 2);
        if (table === 'tastings') expect(lost.length).toBeGreaterThan(0);
        const sound = tastings.find(({ trouble }) => !trouble);
        const host = await house.enter(
          credentials('host', sound?.tasting ?? tastings[0]?.tasting ?? ('' as never), houseKey),
        );
        expect(await host.host({ type: 'OpenDoors' })).toMatchObject({ ok: true });
        const { body } = await house.ask<TastingPage>('GET', '/api/tastings/list?find=under', {
          key: houseKey,
        });
        expect(body.tastings.map(({ tasting }) => tasting)).toEqual([sound?.tasting]);
      }
      await house.close();
    },
  );
});
