import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { photoId } from '../../../core/ids.ts';
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

describe('what grows with every word', () => {
  const changes = {
    answers: [
      "UPDATE answers SET answer = replace(answer, '\"version\":', '\"version\":9') WHERE scope = ''",
      'answers',
    ],
    'what a note was answered': [
      "UPDATE answers SET answer = '7' WHERE scope <> '' AND answer = '1'",
      'answers',
    ],
    'the name of a command': ["UPDATE answers SET command = command || 'x'", 'answers'],
    'a revision, which no seal covers': ['UPDATE sealed_notes SET revision = revision + 4', 'notes'],
    'a note under another pour': ["UPDATE sealed_notes SET pour = 'two' WHERE field = 'nose'", 'notes'],
    'tries at words': ["UPDATE seat_words SET wrong = '[0]'", 'words'],
    'a photo': ['UPDATE photos SET jpeg = zeroblob(length(jpeg))', 'photos'],
    'a line of the list': ["UPDATE summaries SET title = 'Pathence'", 'list'],
  } as const;

  it.each(Object.entries(changes))(
    '%s: is told, nothing else is, and the evening goes on',
    async (_, [sql, part]) => {
      const before = await open();
      const { made, host, noor } = await before.evening();
      await host.host({ type: 'JumpTo', cue: 'one/first/look' });
      expect(await noor.save({ value: 'malt', field: 'nose' })).toMatchObject({ ok: true });
      expect(await noor.raw('device:ask', { type: 'MakeWords', language: 'en' })).toMatchObject({ ok: true });
      await before.store.photos.add(
        made.tasting,
        photoId('a-photo-of-the-front-label'),
        Buffer.alloc(9000, 3),
      );
      await before.close();
      const lookedAt = async () => {
        const house = await open();
        house.store.check();
        house.store.lookThrough(made.tasting);
        return { house, parts: [...(house.store.tastings.altered().get(made.tasting) ?? [])] };
      };
      const sound = await lookedAt();
      expect(sound.parts).toEqual([]);
      await sound.house.close();
      const db = new SqliteDatabase(file);
      expect(db.prepare(sql).run().changes).toBeGreaterThan(0);
      db.close();

      const { house, parts } = await lookedAt();
      expect(parts).toEqual([part]);
      const again = await house.host(made);
      expect(again.count('lost-end')).toBe(0);
      expect(await again.host({ type: 'GiveTime', seconds: 30 })).toMatchObject({ ok: true });
      await house.close();
    },
  );

  it('is told also where a row names an evening that is not there', async () => {
    const before = await open();
    const { noor, host } = await before.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await noor.save({ value: 'malt' });
    await before.close();
    const db = new SqliteDatabase(file);
    db.pragma('foreign_keys = OFF');
    db.exec("UPDATE sealed_notes SET tasting = 'nowhere'");
    db.close();
    const house = await open();
    expect(house.store.check()).toEqual(['A row of sealed_notes names an evening that is not there.']);
    expect(house.store.damaged()).toBe(true);
    await house.close();
  });

  it('[Q7] a key of a notebook that does not open is told, and stops no other notebook nor the server', async () => {
    const before = await open();
    const [hurt, whole] = [await before.evening(), await before.evening()];
    for (const { host, noor } of [hurt, whole]) {
      await host.host({ type: 'JumpTo', cue: 'one/first/look' });
      await noor.save({ value: 'malt' });
    }
    await before.close();
    const keys = readFileSync(`${file}.keys`);
    keys.writeUInt8(keys.readUInt8(60) ^ 4, 60);
    writeFileSync(`${file}.keys`, keys);
    const house = await open();
    const told = [hurt, whole].map(({ made, noor }) => {
      house.store.lookThrough(made.tasting);
      const values = house.store.notebooks.read(made.tasting, noor.seat).entries.map(({ value }) => value);
      return [[...(house.store.tastings.altered().get(made.tasting) ?? [])], values];
    });
    expect(told).toEqual([
      [['notes'], []],
      [[], ['malt']],
    ]);
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
