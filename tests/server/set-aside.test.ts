import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase, { type Database } from 'better-sqlite3';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linkOf } from '../../server/store/chain.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { CreatedTasting, ListedTasting } from '../../shared/wire/http.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';
import { credentials } from './support/device.ts';
import { House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { temporaryFolder } from './support/process.ts';

const folder = temporaryFolder();
const file = join(folder.path, 'quietpour.db');
let house: House;
let clock: ManualClock;
/** The evening that comes to harm, and one that must not notice. */
let hurt: CreatedTasting;
let other: CreatedTasting;
let guestKey: string;
/** The whole store as it was before any harm. */
const sound = join(folder.path, 'sound.db');

const open = async () => {
  clock = new ManualClock();
  house = await House.open({ store: openSqliteStore(file), clock });
};

beforeAll(async () => {
  await open();
  const evening = await house.evening();
  hurt = evening.made;
  guestKey = evening.noor.key;
  await evening.host.host({ type: 'JumpTo', cue: 'one/first/look' });
  await evening.noor.save({ value: 'canary-of-a-note' });
  other = (await house.evening()).made;
  await house.close();
  copyFileSync(file, sound);
});
afterAll(() => folder.remove());

/** Does harm to the stored evening, opens the server on it, and lets the test look. */
async function harmed(harm: (db: Database) => void, look: () => Promise<void>): Promise<void> {
  copyFileSync(sound, file);
  const db = new SqliteDatabase(file);
  harm(db);
  db.close();
  await open();
  try {
    await look();
  } finally {
    await house.close();
  }
}

const listed = async (which = hurt): Promise<ListedTasting | undefined> => {
  const { status, body } = await house.ask<ListedTasting[]>('GET', '/api/tastings', { key: houseKey });
  expect(status).toBe(200);
  return body.find(({ tasting }) => tasting === which.tasting);
};

/** The other evening is conducted as if nothing had happened. */
async function othersGoOn(): Promise<void> {
  expect(await listed(other)).toMatchObject({ stage: 'under-way', trouble: null });
  const host = await house.host(other);
  expect(await host.host({ type: 'JumpTo', cue: 'two/first/nose' })).toMatchObject({ ok: true });
  const guest = await house.guest(other, 'Zoë');
  await guest.until('stage', (stage) => stage.status === 'under-way' && stage.cue.id === 'two/first/nose');
  // A new evening learns from those before: it must be able to pass over the one that it cannot read.
  const fresh = await house.plan();
  expect(await (await house.host(fresh)).host({ type: 'OpenDoors' })).toMatchObject({ ok: true });
}

const refusalOf = (entering: Promise<unknown>): Promise<Refusal> =>
  entering.then(
    () => Promise.reject(new Error('It was let in.')),
    (refused: Refusal) => refused,
  );

const event = (change: (event: Record<string, unknown>) => unknown, seq: number) => (db: Database) => {
  const stored = db.prepare('SELECT event FROM events WHERE tasting = ? AND seq = ?').pluck();
  const before = JSON.parse(String(stored.get(hurt.tasting, seq)));
  const text = JSON.stringify(change(before));
  db.prepare('UPDATE events SET event = ? WHERE tasting = ? AND seq = ?').run(text, hurt.tasting, seq);
};

const harms: readonly (readonly [string, (db: Database) => void, object])[] = [
  [
    'an event that is no JSON any more',
    (db) =>
      db.prepare('UPDATE events SET event = \'{"type":\' WHERE tasting = ? AND seq = 2').run(hurt.tasting),
    { kind: 'event-altered', event: 2 },
  ],
  [
    'an event of which one letter is another',
    event((e) => ({ ...e, cue: 'one/first/loot' }), 4),
    { kind: 'event-altered', event: 4 },
  ],
  [
    'an event that is missing from the middle',
    (db) => db.prepare('DELETE FROM events WHERE tasting = ? AND seq = 3').run(hurt.tasting),
    { kind: 'event-missing', event: 3 },
  ],
  [
    'the event of another evening',
    (db) =>
      db
        .prepare(
          'UPDATE events SET (event, digest) = (SELECT event, digest FROM events WHERE tasting = ? AND seq = 2) WHERE tasting = ? AND seq = 2',
        )
        .run(other.tasting, hurt.tasting),
    { kind: 'event-altered', event: 2 },
  ],
  [
    'a plan that cannot be read',
    (db) =>
      db
        .prepare('UPDATE tastings SET plan = replace(plan, \'"pours":[\', \'"pours":[7,\') WHERE tasting = ?')
        .run(hurt.tasting),
    { kind: 'plan-unreadable', event: null },
  ],
];

describe('an evening that cannot be read', () => {
  it.each(harms)('is set aside by itself: %s', async (_, harm, trouble) => {
    await harmed(harm, async () => {
      expect(await listed()).toMatchObject({ code: hurt.code, title: 'Peat and patience', trouble });
      for (const entering of [house.host(hurt), house.enter(credentials('guest', hurt.tasting, guestKey))]) {
        expect(await refusalOf(entering)).toMatchObject({
          code: 'set-aside',
          message: expect.stringMatching(/cannot go on/),
        });
      }
      // A page of before does not know the word for it.
      const before = { ...credentials('host', hurt.tasting, hurt.hostKey), protocol: 1 };
      expect(await refusalOf(house.enter(before))).toMatchObject({ code: 'not-stored' });
      expect((await house.takeSeat(hurt.code)).status).toBe(503);
      await othersGoOn();
      expect(house.log.lines.join()).not.toContain('canary');
    });
  });

  it('can be saved as it lies, without a note or a key in it, by its host and nobody else', async () => {
    await harmed(harms[0]?.[1] ?? (() => undefined), async () => {
      const path = `/api/tastings/${hurt.tasting}/as-it-lies`;
      const { status, body } = await house.ask<{ events: { event: string }[] }>('GET', path, {
        key: hurt.hostKey,
      });
      expect(status).toBe(200);
      expect(body.events[0]?.event).toContain('DoorsOpened');
      expect(body.events[1]?.event).toBe('{"type":');
      expect(JSON.stringify(body)).not.toMatch(/canary|hash/);
      for (const key of [guestKey, other.hostKey, undefined]) {
        const refused = await house.ask('GET', path, key === undefined ? {} : { key });
        expect([401, 403]).toContain(refused.status);
      }
    });
  });

  it('can be deleted with every byte of it', async () => {
    for (const [, harm] of harms) {
      await harmed(harm, async () => {
        const path = `/api/tastings/${hurt.tasting}`;
        expect((await house.ask('DELETE', path, { key: hurt.hostKey })).status).toBe(204);
        expect(await listed()).toBeUndefined();
        await othersGoOn();
      });
    }
  });

  it('is deleted by itself too once its time is over', async () => {
    const day = 24 * 3600 * 1000;
    await harmed(harms[4]?.[1] ?? (() => undefined), async () => undefined);
    house = await House.open({ store: openSqliteStore(file), clock, keepFor: 30 * day });
    await clock.advance(40 * day);
    expect(await listed()).toBeUndefined();
    await house.close();
  });
});

describe('a field that is missing from what is stored', () => {
  /** Every place of a value in what JSON says: a path of keys. */
  const placesIn = (value: unknown, path: readonly string[] = []): (readonly string[])[] =>
    typeof value !== 'object' || value === null
      ? []
      : Object.entries(value).flatMap(([key, inner]) => [[...path, key], ...placesIn(inner, [...path, key])]);
  const without = (value: unknown, [key = '', ...rest]: readonly string[]): unknown => {
    const copy: Record<string, unknown> = { ...(value as Record<string, unknown>) };
    if (rest.length === 0) delete copy[key];
    else copy[key] = without(copy[key], rest);
    return Array.isArray(value) ? Object.values(copy) : copy;
  };
  const planOf = (db: Database): unknown =>
    JSON.parse(String(db.prepare('SELECT plan FROM tastings WHERE tasting = ?').pluck().get(hurt.tasting)));

  /** Either it is set aside with a sentence, or it goes on to its end. */
  async function usableOrSetAside(): Promise<'usable' | 'set aside'> {
    const found = await listed();
    if (found?.trouble) return 'set aside';
    const host = await house.host(hurt);
    if (host.last('host') === undefined) {
      // A wait for what a refusal keeps from coming would have no end.
      const opened = await host.host({ type: 'OpenDoors' });
      if (!opened.ok) throw new Error(`The doors stay closed: ${opened.message}`);
    }
    const view = await host.until('host');
    const from = view.status === 'under-way' ? view.cue : 'gathering';
    expect(await host.host({ type: 'Advance', from })).toMatchObject({ ok: true });
    const guest = await house.guest(hurt, 'Zoë');
    await guest.until('stage');
    expect(await host.host({ type: 'Finish' })).toMatchObject({ ok: true });
    const recap = await house.ask('GET', `/api/tastings/${hurt.tasting}/recap`, { key: hurt.hostKey });
    expect(recap.status).toBe(200);
    return 'usable';
  }

  const rewrite = (plan: unknown) => (db: Database) => {
    db.prepare('UPDATE tastings SET plan = ? WHERE tasting = ?').run(JSON.stringify(plan), hurt.tasting);
    db.prepare('DELETE FROM events WHERE tasting = ?').run(hurt.tasting);
    db.prepare('DELETE FROM answers WHERE tasting = ?').run(hurt.tasting);
  };

  it('of the plan, each of the first floor, one by one: the evening stays usable', async () => {
    const db = new SqliteDatabase(sound);
    const plan = planOf(db);
    db.close();
    const fields = Object.keys(plan as object);
    expect(fields.length).toBeGreaterThanOrEqual(22);
    for (const field of fields.filter((each) => each !== 'pours')) {
      await harmed(rewrite(without(plan, [field])), async () => {
        expect(`${field}: ${await usableOrSetAside()}`).toBe(`${field}: usable`);
      });
    }
  });

  it('of the plan or of what happened, anywhere: usable, or set aside by itself', async () => {
    const db = new SqliteDatabase(sound);
    const plan = planOf(db);
    const logged = db
      .prepare<[string], { seq: number; event: string }>('SELECT seq, event FROM events WHERE tasting = ?')
      .all(hurt.tasting);
    db.close();
    // Without any pour there is nothing to conduct: the host is told so at the doors.
    const inPlan = placesIn(plan)
      .map((path) => ({ seq: 0, path }))
      .filter(({ path }) => path.join() !== 'pours');
    const inLog = logged.flatMap(({ seq, event: text }) =>
      placesIn(JSON.parse(text)).map((path) => ({ seq, path })),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(fc.constantFrom(...inPlan), fc.constantFrom(...inLog)),
        async ({ seq, path }) => {
          const harm = seq === 0 ? rewrite(without(plan, path)) : relinked(seq, path);
          await harmed(harm, async () => {
            await usableOrSetAside();
            await othersGoOn();
          });
        },
      ),
      { numRuns: 12 },
    );
  });

  /** As an earlier version might have stored it, with digests that fit: only the schema can tell. */
  const relinked = (seq: number, path: readonly string[]) => (db: Database) => {
    event((stored) => without(stored, path), seq)(db);
    relink(db);
  };
});

/** Digests as if what lies there now had been stored. */
function relink(db: Database): void {
  const rows = db
    .prepare<[string], { seq: number; event: string }>(
      'SELECT seq, event FROM events WHERE tasting = ? ORDER BY seq',
    )
    .all(hurt.tasting);
  let digest: string = hurt.tasting;
  for (const { seq, event: text } of rows) {
    digest = linkOf(digest, seq, text);
    db.prepare('UPDATE events SET digest = ? WHERE tasting = ? AND seq = ?').run(digest, hurt.tasting, seq);
  }
}
