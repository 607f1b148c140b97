import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seatId } from '../../core/ids.ts';
import { openSqliteStore, type SqliteStore } from '../../server/store/sqlite.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import type { StoredEvening } from '../stored/evenings.ts';
import { layStore, releases } from '../stored/releases.ts';
import { credentials, type Device } from './support/device.ts';
import { House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { temporaryFolder } from './support/process.ts';

describe.each(releases)('the evenings that %s stored', (release) => {
  const folder = temporaryFolder();
  const evenings = layStore(release, folder.path);
  const clock = new ManualClock(Date.UTC(2031, 6, 1));
  let house: House;
  let store: SqliteStore;
  beforeAll(async () => {
    store = openSqliteStore(join(folder.path, 'quietpour.db'));
    house = await House.open({ store, clock });
  });
  afterAll(async () => {
    await house.close();
    folder.remove();
  });

  it('are all in the list, and none has come to harm', async () => {
    const listed = (
      await house.ask<{ code: string; stage: string }[]>('GET', '/api/tastings', { key: houseKey })
    ).body;
    expect(new Map(listed.map(({ code, stage }) => [code, stage]))).toEqual(
      new Map(evenings.map(({ code, stands }) => [code, stands])),
    );
  });

  it.each(evenings)('conduct $name to its end, and look back on it', async (evening) => {
    const host = await house.host(evening);
    if (evening.stands === 'planned') await opened(host);
    const guests = await Promise.all(
      evening.guests.map(({ key }) => house.enter(credentials('guest', evening.tasting, key))),
    );
    for (const guest of guests) expect((await guest.until('seat')).name).not.toBe('');
    if (evening.stands !== 'finished') await conducted(host, clock);
    for (const guest of guests) await guest.until('stage', ({ status }) => status === 'finished');
    const at = `/api/tastings/${evening.tasting}`;
    const recap = await house.ask<object>('GET', `${at}/recap.json`, { key: evening.hostKey });
    expect(recap).toMatchObject({ status: 200, body: { format: 1 } });
    expect(await csv(house, at, evening)).toContain(',');
    for (const { key } of evening.guests) {
      const { body } = await house.ask<Keepsake>('GET', `/api/keepsake/${evening.tasting}`, { key });
      expect(body.pours.length).toBeGreaterThan(0);
    }
    host.close();
    for (const guest of guests) guest.close();
  });

  it('keep every word of every notebook', async () => {
    const finished = evening('finished');
    for (const { seat } of finished.guests) {
      const { entries } = store.notebooks.read(finished.tasting, seatId(seat));
      expect(entries.length).toBeGreaterThan(40);
      expect(entries.filter(({ field }) => field === 'nose').map(({ value }) => value)).toEqual(
        Array.from({ length: 4 }, () => 'Rauch, Äpfel\nund etwas Süßes'),
      );
      expect(entries).toContainEqual(
        expect.objectContaining({ field: 'odd-one-out', value: { glass: 2, guessed: false } }),
      );
    }
  });

  it('keep what was poured, who is coming, and the labels', async () => {
    const poured = evening('planned, glasses poured, with a label');
    expect(store.documents.read(poured.tasting, 'pouring')?.body).toMatchObject({
      recent: [{ places: [1, 2] }],
    });
    const front = store.tastings.find(poured.tasting)?.plan.pours[0]?.photos?.front;
    expect(front === undefined ? 0 : (await store.photos.find(front))?.length).toBeGreaterThan(500);
    const asked = evening('planned, guests asked');
    expect(store.surveys.read(asked.tasting)).toHaveLength(2);
  });

  it('hold every kind of event there is, so that none is read for the first time at a host’s', () => {
    const fresh = temporaryFolder();
    layStore(release, fresh.path);
    const db = new SqliteDatabase(join(fresh.path, 'quietpour.db'));
    const types = db.prepare("SELECT DISTINCT json_extract(event, '$.type') FROM events").pluck().all();
    db.close();
    fresh.remove();
    expect(types.length).toBeGreaterThanOrEqual(33);
  });

  function evening(name: string): StoredEvening {
    const found = evenings.find((each) => each.name === name);
    if (found === undefined) throw new Error(`No evening of ${release} is called "${name}".`);
    return found;
  }
});

async function opened(host: Device): Promise<void> {
  expect(await host.host({ type: 'OpenDoors' })).toMatchObject({ ok: true });
}

/** Next, until the evening is over. */
async function conducted(host: Device, clock: ManualClock): Promise<void> {
  for (let step = 0; step < 200; step += 1) {
    const view = await host.until('host');
    if (view.status === 'finished') return;
    const from = view.cue;
    await clock.advance(1000);
    const acknowledged = await host.host(
      from === 'farewell' ? { type: 'Finish' } : { type: 'Advance', from },
    );
    expect(acknowledged).toMatchObject({ ok: true });
    await host.until('host', (next) => next.status === 'finished' || next.cue !== from);
  }
  throw new Error('The evening never came to its end.');
}

async function csv(house: House, at: string, { hostKey }: StoredEvening): Promise<string> {
  const answer = await fetch(`${house.url}${at}/recap.csv`, {
    headers: { authorization: `Bearer ${hostKey}` },
  });
  expect(answer.status).toBe(200);
  return answer.text();
}
