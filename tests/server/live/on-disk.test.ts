import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { commandId } from '../../../core/ids.ts';
import { hostsOfNow } from '../../../server/live/rooms.ts';
import { refusal } from '../../../server/refusal.ts';
import { type Store, StoreFailure } from '../../../server/store/store.ts';
import { noor, OneConductor, tasting } from '../support/one-conductor.ts';

let room: OneConductor;
beforeEach(async () => {
  room = await OneConductor.open();
});
afterEach(() => room.close());

/** A store that does not take events while `failing` says so. */
function failingStore(failing: () => Error | undefined): Store {
  const append: Store['sessions']['append'] = async (entry) => {
    const error = failing();
    if (error !== undefined) throw error;
    return room.store.sessions.append(entry);
  };
  return { ...room.store, sessions: { ...room.store.sessions, append } };
}

describe('what the store does not take', () => {
  it('has not happened: it is refused, nobody hears of it, and the same id succeeds afterwards', async () => {
    let failure: Error | undefined;
    room.again({ store: failingStore(() => failure) });
    await room.openDoors();
    const { session, version } = room.conductor.standing;
    failure = new StoreFailure('The disk is full.');
    room.said.length = 0;
    expect(await room.host({ type: 'Hold' }, commandId('held'))).toEqual(refusal('not-stored'));
    expect(room.conductor.standing).toEqual({ session, version });
    expect(room.said).toEqual([]);
    expect(room.log.lines).toEqual([
      JSON.stringify([{ tasting, reason: 'The disk is full.' }, 'not stored']),
    ]);
    failure = undefined;
    expect(await room.host({ type: 'Hold' }, commandId('held'))).toEqual({ ok: true, version: version + 1 });
  });

  it('is no answer when it is a mistake of ours', async () => {
    room.again({ store: failingStore(() => new TypeError('a mistake')) });
    await expect(room.openDoors()).rejects.toThrow('a mistake');
    expect(room.log.lines).toEqual([]);
  });

  it('is asked for again after a second when the clock asked for it', async () => {
    let failure: Error | undefined;
    room.again({ store: failingStore(() => failure) });
    await room.openDoors();
    await room.goTo('welcome');
    failure = new StoreFailure('The disk is full.');
    const { session } = room.conductor.standing;
    if (session.status !== 'under-way' || session.clock.kind !== 'running') throw new Error('not running');
    await room.clock.advance(session.clock.endsAt - room.clock.now());
    expect(room.conductor.standing.session).toMatchObject({ at: session.at });
    await room.clock.advance(999);
    failure = undefined;
    expect(room.conductor.standing.session).toMatchObject({ at: session.at });
    await room.clock.advance(1);
    expect(room.conductor.standing.session).toMatchObject({ at: session.at + 1 });
  });

  it('does not stop the clock for good when it is a mistake of ours: the log says so', async () => {
    let failure: Error | undefined;
    room.again({ store: failingStore(() => failure) });
    await room.openDoors();
    await room.goTo('welcome');
    failure = new TypeError('a mistake');
    await room.clock.advance(10 * 60_000);
    expect(room.log.lines).toEqual([
      JSON.stringify([{ tasting, reason: 'TypeError' }, 'the clock could not be served']),
    ]);
  });
});

describe('what is on disk', () => {
  it('is acknowledged even when it cannot be shown', async () => {
    await room.openDoors();
    vi.spyOn(room.conductor.publisher, 'changed').mockImplementation(() => {
      throw new RangeError('a name that is nobody to know');
    });
    expect(await room.host({ type: 'Hold' })).toEqual({ ok: true, version: 2 });
    expect(room.conductor.standing).toMatchObject({ version: 2, session: { clock: { kind: 'held' } } });
    expect(room.log.lines).toEqual([JSON.stringify([{ tasting, reason: 'RangeError' }, 'not published'])]);
    expect(room.log.lines.join()).not.toContain('a name');
  });

  it("shows the host's own tap at once, and what guests do a moment later", async () => {
    await room.openDoors();
    await room.sit('noor');
    await room.clock.advance(1000);
    await room.guest(noor, { type: 'ChangeSeat', name: 'Noor' });
    await room.guest(noor, { type: 'ChangeSeat', name: 'Nora' });
    room.said.length = 0;
    // The room and its seats come apart; what belongs together carries one version.
    const toHosts = () => [
      ...new Set(
        room.said
          .filter(({ event, to }) => event.startsWith('room') && to.includes(hostsOfNow(tasting)))
          .map(({ body }) => (body as { version: number }).version),
      ),
    ];
    await room.host({ type: 'Hold' });
    expect(toHosts()).toHaveLength(1);
    await room.guest(noor, { type: 'ChangeSeat', name: 'Noor' });
    expect(toHosts()).toHaveLength(1);
    await room.clock.advance(100);
    expect(toHosts()).toHaveLength(2);
  });
});
