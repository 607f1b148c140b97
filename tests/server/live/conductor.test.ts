import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { commandId, cueId, pourId, tastingId } from '../../../core/ids.ts';
import { hostsOf } from '../../../server/live/rooms.ts';
import { turns } from '../support/manual-clock.ts';
import { noor, OneConductor, tasting, tomas } from '../support/one-conductor.ts';

let room: OneConductor;
beforeEach(async () => {
  room = await OneConductor.open();
});
afterEach(() => room.close());

describe('a conductor', () => {
  it('is idle with nobody here, nothing to do and no alarm set', async () => {
    expect(room.conductor.idle).toBe(true);
    room.conductor.presence.arrived('a-socket', { role: 'screen', preview: false });
    expect(room.conductor.idle).toBe(false);
    room.conductor.presence.left('a-socket');
    expect(room.conductor.idle).toBe(true);
    const opening = room.openDoors();
    expect(room.conductor.idle).toBe(false);
    await opening;
    await room.conductor.drained();
    expect(room.conductor.idle).toBe(true);
    await room.goTo('welcome');
    await room.conductor.drained();
    expect(room.conductor.idle).toBe(false);
    room.conductor.stop();
    expect(room.conductor.idle).toBe(true);
  });

  it('lets one task run alone, the host’s hand too, and is drained when all are done', async () => {
    const order: string[] = [];
    let begun: () => void = () => undefined;
    const underWay = new Promise<void>((resolve) => {
      begun = resolve;
    });
    const slow = room.conductor.alone(async () => {
      begun();
      await turns(2);
      order.push('alone');
      return 'its result';
    });
    await underWay;
    // The host's hand passes what waits, and not what is under way.
    const opened = room.openDoors().then(() => order.push('opened'));
    expect(await slow).toBe('its result');
    await room.conductor.drained();
    await opened;
    expect(order).toEqual(['alone', 'opened']);
  });
});

describe('the host', () => {
  const toHosts = (event: string) =>
    room.said.filter((each) => each.event === event && each.to.includes(hostsOf(tasting)));

  it('is told who came and went, and which screens ask', async () => {
    room.conductor.presence.arrived('phone-1', { role: 'guest', seat: noor });
    await room.clock.advance(250);
    expect(toHosts('presence').at(-1)?.body).toMatchObject({ seats: [{ seat: noor }], screensAsking: [] });
    room.conductor.screens.ask('hash of a screen', { id: () => 'screen-1', number: () => 42 });
    await room.clock.advance(250);
    expect(toHosts('presence').at(-1)?.body).toMatchObject({ screensAsking: [{ number: 42 }] });
  });

  it('is told of glasses that were poured, once for one id', async () => {
    const tick = { type: 'TickGlasses', places: [1], pours: [pourId('one')], done: 1 } as const;
    const first = await room.conductor.sendPouringCommand(commandId('a-tick'), tick);
    expect(first).toEqual({ ok: true, version: 1 });
    expect(await room.conductor.sendPouringCommand(commandId('a-tick'), tick)).toEqual(first);
    expect(toHosts('pouring')).toHaveLength(1);
  });
});

describe('the pace of the room', () => {
  const standing = () => {
    const { session } = room.conductor.standing;
    if (session.status !== 'under-way') throw new Error(`The session is ${session.status}.`);
    return session;
  };
  const ready = (seat: typeof noor) =>
    room.guest(seat, {
      type: 'GiveSignal',
      signal: 'ready',
      cue: standing().cues[standing().at]?.id ?? cueId('none'),
    });

  beforeEach(async () => {
    await room.openDoors();
    await room.sit('noor');
    await room.sit('tomas');
    room.conductor.presence.arrived('phone-1', { role: 'guest', seat: noor });
    room.conductor.presence.arrived('phone-2', { role: 'guest', seat: tomas });
    room.conductor.presence.arrived('tablet', { role: 'host' });
  });

  it('[P3] is weighed when somebody goes: those who are still here may all be ready', async () => {
    await room.host({ type: 'ChoosePacing', pacing: { by: 'room', share: 1 } });
    await room.goTo('one/writing/write/nose');
    await room.clock.advance(60_000);
    await ready(noor);
    const { at } = standing();
    room.conductor.presence.left('phone-2');
    await room.clock.advance(14_999);
    expect(standing().at).toBe(at);
    await room.clock.advance(1);
    expect(standing().at).toBe(at + 1);
  });

  it('[P12] is weighed when the last remote guest who is awaited goes', async () => {
    await room.host({ type: 'ChoosePacing', pacing: { by: 'clock' } });
    await room.host({ type: 'WaitForRemote', wait: true });
    await room.guest(tomas, { type: 'ChangeSeat', remote: true });
    await room.goTo('one/writing/write/nose');
    const { at } = standing();
    await room.clock.advance(10 * 60_000);
    expect(standing().at).toBe(at);
    room.conductor.presence.left('phone-2');
    await room.clock.advance(15_000);
    expect(standing().at).toBe(at + 1);
  });

  it("is nobody's to weigh when the host sets it, nor before the doors are open", async () => {
    await room.goTo('one/writing/write/nose');
    const asked = vi.spyOn(room.store.sessions, 'append');
    room.conductor.presence.left('phone-2');
    await room.clock.advance(15_000);
    expect(asked).not.toHaveBeenCalled();
    const closed = room.working({ of: tastingId('elsewhere') });
    closed.presence.arrived('phone-3', { role: 'guest', seat: noor });
    await turns();
    closed.stop();
    expect(room.log.lines).toEqual([]);
  });

  it('[P8] is taken over by the clock when the host has been gone for half a minute', async () => {
    await room.goTo('one/writing/write/nose');
    const { at } = standing();
    await room.clock.advance(10 * 60_000);
    expect(standing().at).toBe(at);
    room.conductor.presence.left('tablet');
    await room.clock.advance(29_999);
    expect(standing().at).toBe(at);
    await room.clock.advance(1);
    expect(standing().at).toBeGreaterThan(at);
  });

  it('[F4] is a change ahead by what the slowest device needs', async () => {
    room.conductor.presence.measured('phone-1', { roundTrip: 200, reach: 170 });
    await room.goTo('one/writing/write/nose');
    expect(standing().enteredAt - room.clock.now()).toBe(200);
  });

  it('[P3] waits after a restart for those who are on their way back, and not for long', async () => {
    await room.host({ type: 'ChoosePacing', pacing: { by: 'room', share: 1 } });
    await room.goTo('one/writing/write/nose');
    await ready(noor);
    await room.clock.advance(20_000);
    const { at } = standing();
    room.again();
    room.conductor.presence.arrived('phone-1', { role: 'guest', seat: noor });
    await room.clock.advance(14_999);
    expect(standing().at).toBe(at);
    await room.clock.advance(1);
    expect(standing().at).toBe(at + 1);
  });
});
