import { describe, expect, it } from 'vitest';
import { photoId, tastingId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { epochMs } from '../../../core/units.ts';
import { mirroredTables } from '../../../server/store/postgres/tables.ts';
import { Diverged } from '../../../server/store/store.ts';
import {
  append,
  everything,
  held,
  ownerSeenBy,
  postgresForTests,
  robin,
  row,
  tasting,
  written,
} from '../support/postgres-processes.ts';

const database = postgresForTests();
const { joined } = database;

describe('an evening of one process', () => {
  it('is found from another, by code and key too, and is not conducted twice', async () => {
    const [one, other] = [await joined('one:1'), await joined('other:2')];
    await written(one);
    expect(await one.cluster.claim(tasting)).toEqual({ at: 'here' });
    expect(await other.cluster.claim(tasting)).toMatchObject({ at: 'elsewhere', address: 'one:1' });
    expect(await other.cluster.claim(tastingId('nowhere'))).toEqual({ at: 'nowhere' });
    expect(await other.cluster.tastingOfKey('aa')).toBe(tasting);
    expect(await other.cluster.tastingOfCode('ABC234')).toBe(tasting);
    expect((await other.tastings.findByCode('ABC234'))?.tasting).toBe(tasting);
    expect(await other.tastings.page({ find: 'planned', most: 5 })).toHaveLength(1);
    expect(await other.sessions.readAnywhere(tasting)).toEqual([held]);
    expect(await other.photos.find(photoId('label-photo-of-the-first'))).toEqual(Buffer.from([255, 0, 1]));
    await expect(append(other, 1)).rejects.toThrow(Diverged);
  });

  it('comes whole to the next, and the one before is refused though it has seen everything', async () => {
    const [one, other] = [await joined('one:1'), await joined('other:2')];
    await written(one);
    const before = everything(one);
    const owner = await ownerSeenBy(other);
    expect(await other.cluster.claim(tasting, owner)).toEqual({ at: 'here' });
    expect(everything(other)).toEqual(before);
    expect(before.notes.entries[0]?.value).toBe('wet slate 🌾');
    // The version is still as it was: the epoch alone keeps it out.
    await expect(append(one, 1, 'late')).rejects.toThrow(Diverged);
    expect(one.told.lost).toEqual([tasting]);
    expect(one.cluster.figures()).toMatchObject({ fenced: 1, owned: 0 });
    await append(other, 1, 'next');
    expect(await other.sessions.readAnywhere(tasting)).toEqual([held, held]);
    expect(one.sessions.version(tasting), 'nothing of it stays in memory').toBe(0);
  });

  it('is taken as it is where a server of before, which knows no digests, has written beside this one', async () => {
    const [one, other] = [await joined('one:1'), await joined('other:2')];
    await written(one);
    const digests = 'SELECT 1 FROM sealed_notes WHERE digest IS NOT NULL';
    const kept = (await database.server.query(database.url, digests)).length;
    expect(kept).toBeGreaterThan(0);
    // As that server says it: all columns but the one that it does not know.
    const columns = 'tasting, notebook, pour, field, value, sealed_value, revision, saved_at';
    await database.server.query(
      database.url,
      `INSERT INTO sealed_notes (${columns}) SELECT ${columns.replace('saved_at', 'saved_at + 5')} FROM sealed_notes
       ON CONFLICT (tasting, notebook, pour, field) DO UPDATE SET saved_at = excluded.saved_at`,
    );
    expect(await database.server.query(database.url, digests)).toEqual([]);
    const owner = await ownerSeenBy(other);
    expect(await other.cluster.claim(tasting, owner)).toEqual({ at: 'here' });
    other.lookThrough(tasting);
    expect(other.tastings.altered()).toEqual(new Map());
  });

  it('[Q7] is opened also where the key of its notebook is damaged, and what is lost is told', async () => {
    const [one, other] = [await joined('one:1'), await joined('other:2')];
    await written(one);
    const bent = 'UPDATE notebook_keys SET slot = set_byte(slot, 60, get_byte(slot, 60) # 4)';
    await database.server.query(database.url, bent);
    const owner = await ownerSeenBy(other);
    expect(await other.cluster.claim(tasting, owner)).toEqual({ at: 'here' });
    expect(other.notebooks.read(tasting, robin).entries).toEqual([]);
    other.lookThrough(tasting);
    expect(other.tastings.altered().get(tasting)).toEqual(new Set(['notes']));
  });

  it('goes to another by itself when its process is gone, if it is under way', async () => {
    const [one, other] = [await joined('one:1'), await joined('other:2')];
    await one.tastings.create(row);
    await one.tastings.create({ ...row, tasting: tastingId('planned'), code: 'XYZ789' });
    const doors = { type: 'DoorsOpened', at: epochMs(5) } as unknown as SessionEvent;
    await one.sessions.append({ tasting, expected: 0, events: [doors] });
    await one.close();
    await expect.poll(() => other.told.taken).toEqual([tasting]);
    expect(other.sessions.version(tasting)).toBe(1);
  });

  it('is given up when nobody asks for it and nobody conducts it, and is whole at whoever asks next', async () => {
    const [one, other] = [await joined('one:1', database.url, 300), await joined('other:2')];
    one.told.conducted.add(tasting);
    await written(one);
    await one.tastings.create({ ...row, tasting: tastingId('planned'), code: 'XYZ789' });
    const before = everything(one);
    await expect
      .poll(() => one.cluster.figures(), { timeout: 10_000 })
      .toMatchObject({ released: 1, owned: 1 });
    expect(everything(one), 'what is conducted stays').toEqual(before);
    expect(one.tastings.has(tastingId('planned')), 'nothing of the other stays in memory').toBe(false);
    one.told.conducted.clear();
    await expect.poll(() => one.cluster.figures().owned, { timeout: 10_000 }).toBe(0);
    expect(one.notebooks.read(tasting, robin).entries).toEqual([]);
    await expect
      .poll(() => database.server.query(database.url, 'SELECT 1 FROM heads WHERE owner IS NOT NULL'))
      .toEqual([]);
    expect(one.told.lost).toEqual([]);
    expect(await other.cluster.claim(tasting)).toEqual({ at: 'here' });
    expect(everything(other)).toEqual(before);
    await append(other, 1, 'next');
  });

  it('stays where it is asked for again while it is being given up', async () => {
    const one = await joined('one:1', database.url, 300);
    await written(one);
    const before = everything(one);
    const asking = setInterval(() => void one.cluster.claim(tasting), 50);
    await new Promise((done) => setTimeout(done, 1500));
    expect(one.cluster.figures()).toMatchObject({ released: 0, owned: 1 });
    clearInterval(asking);
    await expect.poll(() => one.cluster.figures().owned, { timeout: 10_000, interval: 5 }).toBe(0);
    expect(await one.cluster.claim(tasting)).toEqual({ at: 'here' });
    expect(everything(one)).toEqual(before);
    await append(one, 1, 'next');
    expect(one.cluster.figures()).toMatchObject({ owned: 1, fenced: 0 });
  });

  it('takes a deleted notebook along with its key, and a deleted tasting with everything', async () => {
    const one = await joined('one:1');
    await written(one);
    const keys = () => database.server.query(database.url, 'SELECT notebook FROM notebook_keys');
    expect(await keys()).toEqual([{ notebook: 'robin' }]);
    await one.notebooks.forget(tasting, robin);
    expect(await keys()).toEqual([]);
    expect(one.notebooks.read(tasting, robin).entries).toEqual([]);
    await one.tastings.remove(tasting);
    const tables = [...mirroredTables.map(({ name }) => name), 'heads', 'photos'];
    for (const table of tables)
      expect(await database.server.query(database.url, `SELECT * FROM ${table}`), table).toEqual([]);
    expect(await one.cluster.claim(tasting)).toEqual({ at: 'nowhere' });
  });

  it('commits together what arrives together, and one that fails takes no other with it', async () => {
    const one = await joined('one:1');
    await one.tastings.create(row);
    const before = one.cluster.figures().commits;
    const keys = ['k1', 'k2', 'k3'].map((hash) =>
      one.keys.add({ hash, tasting, role: 'host', expiresAt: null }),
    );
    const twice = one.keys.add({ hash: 'k1', tasting, role: 'host', expiresAt: null });
    await expect(twice).rejects.toThrow();
    await Promise.all(keys);
    expect(one.cluster.figures().commits - before).toBe(1);
  });

  it('never takes over the key of another evening', async () => {
    const [one, other] = [await joined('one:1'), await joined('other:2')];
    await written(one);
    const theirs = tastingId('theirs');
    await other.tastings.create({ ...row, tasting: theirs, code: 'THEIRS' });
    const stolen = other.keys.add({ hash: 'aa', tasting: theirs, role: 'host', expiresAt: null });
    const own = other.keys.add({ hash: 'bb', tasting: theirs, role: 'host', expiresAt: null });
    await expect(stolen).rejects.toThrow();
    await own;
    expect(await one.cluster.tastingOfKey('aa')).toBe(tasting);
    expect(await one.cluster.tastingOfKey('bb')).toBe(theirs);
  });
});
