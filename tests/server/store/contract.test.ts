import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, pourId, seatId, tastingId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { epochMs } from '../../../core/units.ts';
import { type Store, StoreFailure } from '../../../server/store/store.ts';
import { consentsBefore, permitsOf } from '../../../shared/wire/permits.ts';
import type { SharingBefore } from '../../../shared/wire/sharing.ts';
import { planOf } from '../../support/plans.ts';
import { everyStore } from '../support/every-store.ts';

/** One suite that every store has to pass. */
const stores = everyStore();

const tasting = tastingId('harvest');
const row = { tasting, code: 'ABC234', plan: planOf(3), revision: 1, createdAt: epochMs(1000) };
const held: SessionEvent = { type: 'ReminderCleared' };
const answered = (id: string) => ({ command: commandId(id), answer: { ok: true, version: 1 } as const });

describe.each(stores)('%s', (_, openIn) => {
  let folder: string;
  let store: Store;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'store-'));
    store = await openIn(folder);
    await store.tastings.create(row);
  });
  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true });
  });

  it('finds a tasting by its id and by its code, and lists the newest first', async () => {
    const younger = { ...row, tasting: tastingId('winter'), code: 'XYZ789', createdAt: epochMs(2000) };
    await store.tastings.create(younger);
    expect(store.tastings.find(tasting)).toEqual(row);
    expect(await store.tastings.findByCode('XYZ789')).toEqual(younger);
    expect(await store.tastings.findByCode('NOBODY')).toBeUndefined();
    expect((await store.tastings.list()).map((each) => each.code)).toEqual(['XYZ789', 'ABC234']);
  });

  it('refuses a second tasting with the same code', async () => {
    await expect(store.tastings.create({ ...row, tasting: tastingId('other') })).rejects.toThrow(
      StoreFailure,
    );
    expect(await store.tastings.list()).toHaveLength(1);
  });

  it('saves a plan only on top of the revision it grew from', async () => {
    expect(await store.tastings.savePlan(tasting, planOf(6), 1)).toBe(2);
    expect(await store.tastings.savePlan(tasting, planOf(9), 1)).toBeUndefined();
    expect(store.tastings.find(tasting)?.plan.pours).toHaveLength(6);
  });

  it('appends events in order with the answer that was given', async () => {
    await store.sessions.append({
      tasting,
      expected: 0,
      events: [held, held],
      answered: answered('command-1'),
    });
    await store.sessions.append({ tasting, expected: 2, events: [held] });
    expect(store.sessions.version(tasting)).toBe(3);
    expect(store.sessions.read(tasting)).toEqual([held, held, held]);
    expect(store.sessions.answerTo(tasting, commandId('command-1'))).toEqual({ ok: true, version: 1 });
    expect(store.sessions.answerTo(tasting, commandId('command-2'))).toBeUndefined();
  });

  it('refuses a writer that has not seen everything, and nothing of it stays', async () => {
    await store.sessions.append({ tasting, expected: 0, events: [held] });
    const late = store.sessions.append({
      tasting,
      expected: 0,
      events: [held],
      answered: answered('command-3'),
    });
    await expect(late).rejects.toThrow(StoreFailure);
    await expect(late).rejects.toThrow('Expected 0 events and found 1: two writers share one session.');
    expect(store.sessions.version(tasting)).toBe(1);
    expect(store.sessions.answerTo(tasting, commandId('command-3'))).toBeUndefined();
  });

  it('commits together without letting one failure take the others', async () => {
    const results = await Promise.allSettled([
      store.sessions.append({ tasting, expected: 0, events: [held] }),
      store.sessions.append({ tasting, expected: 7, events: [held] }),
      store.sessions.append({ tasting, expected: 1, events: [held] }),
    ]);
    expect(results.map((each) => each.status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(store.sessions.version(tasting)).toBe(2);
  });

  it('keeps notes by seat, pour and field, each with what it was when sealed', async () => {
    const seat = seatId('seat-1');
    const entry = { pour: pourId('ash'), field: 'nose', value: 'wet slate / "hay" 🌾', revision: 1 } as const;
    const first = { ...entry, savedAt: epochMs(5) };
    const second = { ...first, value: 'wet slate and more', revision: 2, sealedValue: first.value };
    const answer = { ok: true, revision: 1, value: entry.value, savedAt: epochMs(5) } as const;
    await store.notebooks.save({
      tasting,
      seat,
      entry: first,
      answered: { command: commandId('note-0001'), answer },
    });
    expect(store.notebooks.read(tasting, seat)).toEqual({ entries: [first], consents: [] });
    await store.notebooks.save({
      tasting,
      seat,
      entry: second,
      answered: { command: commandId('note-0002'), answer },
    });
    expect(store.notebooks.find(tasting, seat, pourId('ash'), 'nose')).toEqual(second);
    expect(store.notebooks.answerTo(tasting, seat, commandId('note-0001'))).toEqual({ revision: 1 });
    expect(store.notebooks.answerTo(tasting, seatId('seat-2'), commandId('note-0001'))).toBeUndefined();
  });

  it('reads only pages whose guests permit it, and not after it is withdrawn', async () => {
    const answer = { ok: true, version: 1 } as const;
    const share = (seat: string, command: string, sharing: SharingBefore) =>
      store.notebooks.consent({
        tasting,
        seat: seatId(seat),
        pours: [pourId('ash')],
        consents: consentsBefore(sharing),
        answered: { command: commandId(command), answer },
      });
    await share('seat-1', 'share-001', 'shared');
    await share('seat-2', 'share-002', 'shared');
    await share('seat-2', 'share-003', 'private');
    await share('seat-3', 'share-004', 'shared');
    await share('seat-3', 'share-005', 'counted');
    expect(store.notebooks.readPermitted(tasting, [pourId('ash'), pourId('elm')])).toEqual([
      ...(['shared', 'private', 'counted'] as const).map((sharing, index) => {
        const consents = consentsBefore(sharing);
        return {
          seat: `seat-${index + 1}`,
          pour: 'ash',
          consents,
          permits: permitsOf(consents),
          entries: [],
        };
      }),
    ]);
    expect(store.notebooks.read(tasting, seatId('seat-1')).consents).toEqual([
      { pour: 'ash', consents: consentsBefore('shared') },
    ]);
  });

  it('forgets one seat with its notes, its choices, its answers and its keys, and nobody else', async () => {
    const entry = {
      pour: pourId('ash'),
      field: 'nose',
      value: 'slate',
      revision: 1,
      savedAt: epochMs(5),
    } as const;
    const answer = { ok: true, revision: 1, value: 'slate', savedAt: epochMs(5) } as const;
    for (const seat of ['seat-1', 'seat-2'].map(seatId)) {
      const command = commandId(`note-of-${seat}`);
      await store.notebooks.save({ tasting, seat, entry, answered: { command, answer } });
      const said = { command: commandId(`share-of-${seat}`), answer: { ok: true, version: 1 } } as const;
      const consents = consentsBefore('counted');
      await store.notebooks.consent({ tasting, seat, pours: [entry.pour], consents, answered: said });
      await store.keys.add({ hash: `key of ${seat}`, tasting, role: 'seat', seat, expiresAt: null });
    }
    await store.keys.add({ hash: 'key of the host', tasting, role: 'host', expiresAt: null });
    await store.notebooks.forget(tasting, seatId('seat-1'));
    expect(store.notebooks.read(tasting, seatId('seat-1'))).toEqual({ entries: [], consents: [] });
    expect(store.notebooks.answerTo(tasting, seatId('seat-1'), commandId('note-of-seat-1'))).toBeUndefined();
    expect(store.keys.find('key of seat-1')).toBeUndefined();
    expect(store.notebooks.read(tasting, seatId('seat-2'))).toMatchObject({ entries: [entry] });
    expect(store.notebooks.answerTo(tasting, seatId('seat-2'), commandId('note-of-seat-2'))).toEqual({
      revision: 1,
    });
    expect(store.notebooks.readPermitted(tasting, [entry.pour]).map(({ seat }) => seat)).toEqual(['seat-2']);
    expect(store.keys.find('key of seat-2')).toBeDefined();
    expect(store.keys.find('key of the host')).toBeDefined();
  });

  it('keeps keys by their hash and withdraws them by whom they are for', async () => {
    const key = { hash: 'aa', tasting, role: 'host', expiresAt: epochMs(9) } as const;
    await store.keys.add(key);
    await store.keys.add({ hash: 'bb', tasting, role: 'seat', seat: seatId('seat-1'), expiresAt: null });
    expect(store.keys.find('aa')).toEqual(key);
    await store.keys.revoke(tasting, { role: 'host' });
    expect(store.keys.find('aa')).toBeUndefined();
    expect(store.keys.find('bb')).toMatchObject({ role: 'seat', seat: 'seat-1' });
  });

  it('stores the key of a seat in the same commit as the seat', async () => {
    const key = { hash: 'cc', tasting, role: 'seat', seat: seatId('seat-9'), expiresAt: null } as const;
    const refused = store.sessions.append({ tasting, expected: 5, events: [held], key });
    await expect(refused).rejects.toThrow(StoreFailure);
    expect(store.keys.find('cc')).toBeUndefined();
    await store.sessions.append({ tasting, expected: 0, events: [held], key });
    expect(store.keys.find('cc')).toEqual(key);
  });

  it('replaces a document only on top of the revision it grew from', async () => {
    const { documents } = store;
    expect(documents.read(tasting, 'pouring')).toBeUndefined();
    expect(await documents.save(tasting, 'pouring', { glasses: ['wet slate 🌾'] }, 0)).toBe(1);
    expect(await documents.save(tasting, 'pouring', { glasses: [] }, 0)).toBeUndefined();
    expect(documents.read(tasting, 'pouring')).toEqual({ body: { glasses: ['wet slate 🌾'] }, revision: 1 });
    expect(await documents.save(tasting, 'pouring', { glasses: [] }, 1)).toBe(2);
    expect(documents.read(tasting, 'pouring')).toEqual({ body: { glasses: [] }, revision: 2 });
    await expect(documents.save(tastingId('nowhere'), 'pouring', {}, 0)).rejects.toThrow(StoreFailure);
  });

  it('removes a tasting with everything in it', async () => {
    await store.sessions.append({ tasting, expected: 0, events: [held], answered: answered('command-1') });
    await store.keys.add({ hash: 'aa', tasting, role: 'host', expiresAt: null });
    await store.documents.save(tasting, 'pouring', {}, 0);
    await store.tastings.remove(tasting);
    expect(await store.tastings.list()).toEqual([]);
    expect(store.documents.read(tasting, 'pouring')).toBeUndefined();
    expect(store.sessions.version(tasting)).toBe(0);
    expect(store.sessions.answerTo(tasting, commandId('command-1'))).toBeUndefined();
    expect(store.keys.find('aa')).toBeUndefined();
  });
});
