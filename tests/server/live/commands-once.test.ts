import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId, seatId, tastingId } from '../../../core/ids.ts';
import { seconds } from '../../../core/units.ts';
import { refusal } from '../../../server/refusal.ts';
import { keyOf, noor, OneConductor, tasting, tomas } from '../support/one-conductor.ts';

let room: OneConductor;
beforeEach(async () => {
  room = await OneConductor.open();
});
afterEach(() => room.close());

describe('a command', () => {
  it('takes effect once for one id, with the same answer, also when the server was started again', async () => {
    await room.openDoors();
    const first = await room.host({ type: 'GiveTime', seconds: seconds(60) }, commandId('a-minute'));
    const { version } = room.conductor.standing;
    expect(first).toEqual({ ok: true, version });
    await room.host({ type: 'Hold' });
    expect(await room.host({ type: 'GiveTime', seconds: seconds(60) }, commandId('a-minute'))).toEqual(first);
    room.again();
    expect(room.conductor.standing.version).toBe(version + 1);
    expect(await room.host({ type: 'GiveTime', seconds: seconds(60) }, commandId('a-minute'))).toEqual(first);
    expect(room.store.sessions.version(tasting)).toBe(version + 1);
  });

  it('that was refused is refused again for the same id, whatever changed', async () => {
    const early = await room.host({ type: 'Hold' }, commandId('too-early'));
    expect(early).toEqual(refusal('not-open'));
    await room.openDoors();
    expect(await room.host({ type: 'Hold' }, commandId('too-early'))).toEqual(early);
    room.again();
    expect(await room.host({ type: 'Hold' }, commandId('too-early'))).toEqual(early);
    expect(await room.host({ type: 'Hold' })).toMatchObject({ ok: true });
  });

  it('has an id of its sender alone: a guest cannot answer for another, nor for the host', async () => {
    await room.openDoors();
    await room.sit('noor');
    await room.sit('tomas');
    const id = commandId('the-same-id');
    const rename = (seat: typeof noor, name: string) =>
      room.conductor.askAsGuest(seat, id, { type: 'ChangeSeat', name });
    expect(await rename(noor, 'Noor')).toMatchObject({ ok: true });
    expect(await rename(tomas, 'Tomás')).toMatchObject({ ok: true });
    expect(await room.host({ type: 'Hold' }, id)).toMatchObject({ ok: true });
    expect(room.conductor.standing.session).toMatchObject({
      clock: { kind: 'held' },
      seats: { noor: { name: 'Noor' }, tomas: { name: 'Tomás' } },
    });
    const before = room.conductor.standing.version;
    expect(await rename(noor, 'Nora')).toMatchObject({ ok: true, version: before - 2 });
    expect(room.conductor.standing.version).toBe(before);
  });

  it('that comes together with its twin takes effect once', async () => {
    await room.openDoors();
    const id = commandId('twice-at-once');
    const time = () => room.host({ type: 'GiveTime', seconds: seconds(60) }, id);
    const [first, second] = await Promise.all([time(), time()]);
    expect(second).toEqual(first);
    expect(room.conductor.standing.version).toBe(room.store.sessions.version(tasting));
    expect(room.store.sessions.read(tasting).filter(({ type }) => type === 'TimeGiven')).toHaveLength(1);
  });

  it('opens the doors with the plan as it is stored, and not where there is none', async () => {
    expect(await room.openDoors()).toEqual({ ok: true, version: 1 });
    expect(room.conductor.standing).toMatchObject({
      version: 1,
      session: { plan: { title: 'Peat and patience' } },
    });
    const elsewhere = room.working({ of: tastingId('elsewhere') });
    expect(await elsewhere.askAsHost(room.anId(), { type: 'OpenDoors' })).toEqual(refusal('no-such-tasting'));
    elsewhere.stop();
  });
});

describe('a seat', () => {
  it('is taken once for one key, and found again with it', async () => {
    await room.openDoors();
    expect(await room.sit('noor')).toEqual({ ok: true, seat: noor });
    expect(room.store.keys.find(keyOf('noor').hash)).toEqual(keyOf('noor'));
    const { version } = room.conductor.standing;
    expect(await room.sit('another', room.anId(), keyOf('noor'))).toEqual({ ok: true, seat: noor });
    expect(room.conductor.standing.version).toBe(version);
  });

  it('is not had for the key of another tasting, nor for one that is no guest’s', async () => {
    await room.openDoors();
    const winter = tastingId('winter');
    await room.create(winter, 'XYZ789');
    await room.store.keys.add(keyOf('stranger', winter));
    await room.store.keys.add({ hash: 'hash of the host', tasting, role: 'host', expiresAt: null });
    expect(await room.sit('stranger')).toEqual(refusal('wrong-key'));
    expect(await room.sit('noor', room.anId(), { ...keyOf('noor'), hash: 'hash of the host' })).toEqual(
      refusal('wrong-key'),
    );
    expect(room.conductor.standing.session).toMatchObject({ seats: {} });
  });

  it('is had with the same request once the doors are open: a refusal at the door is not remembered', async () => {
    const id = commandId('let-me-in');
    expect(await room.sit('noor', id)).toEqual(refusal('not-open'));
    expect(room.store.sessions.answerTo(tasting, commandId(`noor/${id}`))).toBeUndefined();
    await room.openDoors();
    await room.host({ type: 'SetDoors', doors: 'closed' });
    expect(await room.sit('noor', id)).toEqual(refusal('doors-closed'));
    await room.host({ type: 'SetDoors', doors: 'open' });
    expect(await room.sit('noor', id)).toEqual({ ok: true, seat: noor });
  });

  it('is not to be had at a full table: who waits counts, who left or was removed does not', async () => {
    room.again({ seatLimit: 2 });
    await room.openDoors();
    await room.sit('noor');
    await room.host({ type: 'SetDoors', doors: 'ask' });
    await room.sit('tomas');
    expect(await room.sit('ilse')).toEqual(refusal('table-full'));
    await room.host({ type: 'RemoveSeat', seat: tomas });
    expect(await room.sit('ilse')).toEqual({ ok: true, seat: 'ilse' });
    await room.guest(noor, { type: 'LeaveTable' });
    expect(await room.sit('anna')).toEqual({ ok: true, seat: 'anna' });
    expect(await room.sit('ben')).toEqual(refusal('table-full'));
  });

  it('is not to be had for ever by sitting down and leaving: there are five times as many in all', async () => {
    room.again({ seatLimit: 1 });
    await room.openDoors();
    for (const seat of ['a', 'b', 'c', 'd', 'e']) {
      expect(await room.sit(seat)).toEqual({ ok: true, seat });
      await room.guest(seatId(seat), { type: 'LeaveTable' });
    }
    expect(await room.sit('f')).toEqual(refusal('table-full'));
  });
});
