import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CallView } from '../../shared/wire/call.ts';
import {
  ask,
  type FromAfar,
  HouseFromAfar,
  inCall,
  join,
  named,
  refused,
  signal,
} from './support/callers.ts';
import { credentials } from './support/device.ts';
import { aKey, type House } from './support/house.ts';
import type { ManualClock } from './support/manual-clock.ts';

let away: HouseFromAfar;
let house: House;
let clock: ManualClock;
beforeEach(async () => {
  away = await HouseFromAfar.open();
  ({ house, clock } = away);
});
afterEach(() => house.close());

describe('[V6] who goes', () => {
  const threeInCall = async () => {
    const tonight = await away.evening();
    const { host, noor, tomas } = tonight;
    await join(host, 'host-tablet');
    await join(noor, 'noor-phone');
    await join(tomas, 'tomas-phone');
    await inCall(host, 'host-tablet', 'noor-phone', 'tomas-phone');
    return tonight;
  };

  it.each<[string, (tonight: FromAfar) => Promise<unknown>]>([
    ['leaves the call', ({ noor }) => ask(noor, { type: 'Leave' })],
    ['leaves the table', ({ noor }) => noor.guest({ type: 'LeaveTable' })],
    ['is asked to leave', ({ host, noor }) => host.host({ type: 'RemoveSeat', seat: noor.seat })],
    ['comes to the table', ({ noor }) => noor.guest({ type: 'ChangeSeat', remote: false })],
    [
      'is forgotten',
      ({ made, noor }) => house.ask('DELETE', `/api/keepsake/${made.tasting}`, { key: noor.key }),
    ],
  ])('is out at once when they: %s', async (_, go) => {
    const tonight = await threeInCall();
    await go(tonight);
    // The clock stands still: nothing was waited for.
    await inCall(tonight.host, 'host-tablet', 'tomas-phone');
    expect(await signal(tonight.host, 'noor-phone')).toEqual(refused('no-such-peer'));
  });

  it('vanishes within five seconds, and stays when the line comes back before', async () => {
    const { made, host, noor } = await threeInCall();
    noor.close();
    await host.until('presence', ({ seats }) => seats.every(({ seat }) => seat !== noor.seat));
    const back = await house.enter(credentials('guest', made.tasting, noor.key));
    await back.until('seat');
    await clock.advance(2000);
    expect(await join(back, 'noor-phone')).toMatchObject({ ok: true });
    await clock.advance(5000);
    expect(named((await host.until('call')) as CallView)).toContain('noor-phone');
    const views = host.count('call');
    back.close();
    await host.until('presence', ({ seats }) => seats.every(({ seat }) => seat !== noor.seat));
    await clock.advance(2400);
    await host.level();
    expect(host.count('call')).toBe(views);
    await clock.advance(200);
    await inCall(host, 'host-tablet', 'tomas-phone');
  });

  it('does not lose their place to a device with another key that names it', async () => {
    const { made, noor, tomas } = await threeInCall();
    expect(await join(tomas, 'noor-phone')).toEqual(refused('wrong-key'));
    const key = aKey();
    await house.takeSeat(made.code, { key, name: 'Vera', remote: true });
    const vera = await house.enter(credentials('guest', made.tasting, key));
    expect(await join(vera, 'noor-phone')).toEqual(refused('wrong-key'));
    expect(await signal(noor, 'tomas-phone')).toEqual({ ok: true });
  });

  it('[V7] leaves nothing of itself behind when a device was first the television and then the camera at the table', async () => {
    const tonight = await threeInCall();
    const screen = await away.screenOf(tonight);
    await join(screen, 'television');
    await inCall(tonight.host, 'host-tablet', 'noor-phone', 'tomas-phone', 'television');
    expect(await join(screen, 'room-camera', { as: 'room' })).toMatchObject({ ok: true });
    await inCall(tonight.host, 'host-tablet', 'noor-phone', 'tomas-phone', 'room-camera');
    await ask(screen, { type: 'Leave' });
    await inCall(tonight.host, 'host-tablet', 'noor-phone', 'tomas-phone');
  });

  it('takes the screens with them when the host takes those away', async () => {
    const tonight = await threeInCall();
    await join(await away.screenOf(tonight), 'television');
    await inCall(tonight.host, 'host-tablet', 'noor-phone', 'tomas-phone', 'television');
    await house.ask('DELETE', `/api/tastings/${tonight.made.tasting}/screens`, { key: tonight.made.hostKey });
    await inCall(tonight.host, 'host-tablet', 'noor-phone', 'tomas-phone');
  });
});
