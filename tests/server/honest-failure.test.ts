import { chmodSync, mkdirSync, openSync, readdirSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { textFields } from '../../shared/notes/entry.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';
import { House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

let folder: ReturnType<typeof temporaryFolder>;
beforeEach(() => {
  folder = temporaryFolder();
});
afterEach(() => folder.remove());

const file = () => join(folder.path, 'quietpour.db');
const bytes = () =>
  Buffer.concat(
    readdirSync(folder.path)
      // The list of what older backups must forget names it, and holds no word.
      .filter((name) => !name.endsWith('.forgotten'))
      .map((name) => readFileSync(join(folder.path, name))),
  ).toString('latin1');

describe('a disk that is full', () => {
  it('is said with every note, nothing counts as saved, and room made is room to save in', async () => {
    const store = openSqliteStore(file(), { pages: 60 });
    const house = await House.open({ store });
    const other = await house.plan();
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    expect(await noor.save({ value: 'kept' })).toMatchObject({ ok: true, revision: 1 });
    // Plans fill the disk, and then pages of a notebook whatever was too little for one more plan.
    const body = { plan: aPlan({ welcome: 'Come in. '.repeat(400) }) };
    let plans = 0;
    while (plans < 200 && (await house.ask('POST', '/api/tastings', { key: houseKey, body })).status === 201)
      plans += 1;
    let refused: unknown;
    const kept = new Map<string, string>([['nose', 'kept']]);
    for (const field of textFields) {
      const base = field === 'nose' ? 1 : 0;
      const value = 'peat '.repeat(700);
      const answer = await noor.save({ field, value, base });
      if (answer.ok) kept.set(field, value);
      else refused ??= answer;
    }
    expect(refused).toMatchObject({
      code: 'not-stored',
      message: expect.stringMatching(/keep this page open/),
    });
    const stored = store.notebooks.read(made.tasting, noor.seat).entries;
    expect(new Map(stored.map(({ field, value }) => [field, value]))).toEqual(kept);
    expect(house.log.lines.join()).toMatch(/The disk is full: free some space/);
    expect(house.log.lines.join()).not.toContain('peat');
    // Reading goes on, and the host can make room.
    expect((await house.ask('GET', '/api/tastings', { key: houseKey })).body).toHaveLength(
      Math.min(2 + plans, 20),
    );
    expect((await house.ask('DELETE', `/api/tastings/${other.tasting}`, { key: houseKey })).status).toBe(204);
    expect(await noor.save({ value: 'short', base: 1 })).toMatchObject({ ok: true, revision: 2 });
    await house.close();
  });
});

describe('a store that is damaged in one place', () => {
  it('refuses what cannot be read with a sentence, and serves the rest', async () => {
    const house = await House.open({ store: openSqliteStore(file()) });
    const { made } = await house.evening();
    await house.close();
    damage(file(), 'events');
    const again = await House.open({ store: openSqliteStore(file()) });
    const refusal = await again.host(made).then(
      () => 'let in',
      (error: Refusal) => error,
    );
    expect(refusal).toMatchObject({ code: 'set-aside', message: expect.stringMatching(/cannot go on/) });
    const seat = await again.takeSeat(made.code);
    expect(seat).toMatchObject({ status: 503, body: { code: 'set-aside' } });
    expect(again.log.lines.length).toBeGreaterThan(0);
    expect((await again.plan(aPlan({ title: 'A new one' }))).code).toHaveLength(6);
    expect((await again.ask('GET', '/healthz')).status).toBe(200);
    await again.close();
  });
});

/** Overwrites the first page of a table, as a bad sector would. */
function damage(path: string, table: string): void {
  const db = new SqliteDatabase(path);
  const page = Number(db.prepare('SELECT rootpage FROM sqlite_master WHERE name = ?').pluck().get(table));
  const size = Number(db.pragma('page_size', { simple: true }));
  db.close();
  writeSync(openSync(path, 'r+'), Buffer.alloc(size, 0x5a), 0, size, (page - 1) * size);
}

describe('a store that may not be written', () => {
  it('is said at the start, in one sentence', async () => {
    const data = join(folder.path, 'data');
    mkdirSync(data);
    await openSqliteStore(join(data, 'quietpour.db')).close();
    chmodSync(join(data, 'quietpour.db'), 0o444);
    chmodSync(data, 0o555);
    chmodSync(folder.path, 0o755);
    // Root may write everywhere: another user, who may not, starts the server.
    const nobody = process.getuid?.() === 0 ? 65_534 : undefined;
    const { code, stderr } = await new ServerProcess(data, {}, nobody).exited;
    chmodSync(data, 0o755);
    expect(code).toBe(1);
    expect(stderr).toMatch(/^The data folder.* cannot be written.*give this user the right to write there/);
    expect(stderr.trim().split('\n')).toHaveLength(1);
  });
});

describe('what is deleted', () => {
  it('is gone from the file and its log at once, while the server runs', async () => {
    const house = await House.open({ store: openSqliteStore(file()) });
    const { made, host, noor, tomas } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await noor.save({ value: 'canary-of-the-first-draft' });
    await noor.save({ value: 'canary-of-the-second-draft', base: 1 });
    await tomas.guest({ type: 'ChangeSeat', name: 'Canary of a name' });
    // A note is sealed as long as it is there; a name is not.
    expect(bytes()).toMatch(/Canary of a name/);
    expect(bytes()).not.toMatch(/canary-of/);
    await house.ask('DELETE', `/api/tastings/${made.tasting}`, { key: made.hostKey });
    expect(await noor.dismissed()).toBe('tasting-deleted');
    expect(bytes()).not.toMatch(/canary/i);
    expect(bytes()).not.toContain(made.tasting);
    await house.close();
  });

  it('goes by itself once its time is over, counted from the last thing that happened', async () => {
    const day = 24 * 3600 * 1000;
    const clock = new ManualClock();
    const house = await House.open({ store: openSqliteStore(file()), clock, keepFor: 30 * day });
    const planned = await house.plan(aPlan({ title: 'Planned for later', startsAt: '2031-06-20T19:00:00Z' }));
    const { made, host } = await house.evening(aPlan({ title: 'Canary evening' }));
    await clock.advance(20 * day);
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    const titles = async () =>
      (await house.ask<{ title: string }[]>('GET', '/api/tastings', { key: houseKey })).body.map(
        ({ title }) => title,
      );
    await clock.advance(29 * day);
    expect(await titles()).toContain('Canary evening');
    await clock.advance(2 * day);
    expect(await titles()).toEqual(['Planned for later']);
    expect(await host.dismissed()).toBe('tasting-deleted');
    expect(bytes()).not.toContain('Canary evening');
    await clock.advance(30 * day);
    expect(await titles()).toEqual([]);
    expect(planned.tasting).not.toBe(made.tasting);
    await house.close();
  });
});
