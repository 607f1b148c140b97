import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type CallPeer, type CallView, longestDescription } from '../../shared/wire/call.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';
import {
  ask,
  atHome,
  closed,
  HouseFromAfar,
  inCall,
  join,
  named,
  refused,
  signal,
} from './support/callers.ts';
import { credentials } from './support/device.ts';
import type { Guest, House } from './support/house.ts';
import type { ManualClock } from './support/manual-clock.ts';

let away: HouseFromAfar;
let house: House;
let clock: ManualClock;
beforeEach(async () => {
  away = await HouseFromAfar.open();
  ({ house, clock } = away);
});
afterEach(() => house.close());

describe('[V7] who is in the call', () => {
  it('is told to those who may be in it and have asked, and what they have open', async () => {
    const { host, noor, tomas } = await away.evening();
    expect(await ask(host, { type: 'Watch' })).toEqual({ ok: true });
    expect(await join(noor, 'noor-phone')).toEqual({ ok: true, servers: [] });
    await inCall(host, 'noor-phone');
    await ask(noor, { type: 'Show', shown: { ...closed, camera: true } });
    const view = await host.until('call', ({ peers }) => peers[0]?.camera === true);
    expect(view.peers).toEqual([
      {
        peer: 'peer-noor-phone',
        role: 'guest',
        seat: noor.seat,
        name: 'Noor',
        microphone: false,
        camera: true,
        voiceOnly: false,
      } satisfies Record<keyof CallPeer, unknown>,
    ]);
    await tomas.level();
    expect(tomas.count('call')).toBe(0);
  });

  it('is nobody who sits at the table, no helper, no small picture, and nobody from another evening', async () => {
    const { made, host, noor } = await house.evening();
    expect(await join(noor, 'at-table')).toEqual(refused('call-from-home'));
    expect(await ask(noor, { type: 'Watch' })).toEqual(refused('call-from-home'));
    const preview = await house.enter(credentials('screen', made.tasting, made.hostKey));
    expect(await join(preview, 'small-picture')).toEqual(refused('wrong-role'));
    await join(host, 'host-tablet');
    const other = await away.evening();
    await join(other.noor, 'elsewhere');
    expect(await signal(other.noor, 'host-tablet')).toEqual(refused('no-such-peer'));
    expect(await join(other.tomas, 'host-tablet')).toMatchObject({ ok: true });
    await host.level();
    expect(host.count('call-signal')).toBe(0);
    expect(named(host.last('call') as CallView)).toEqual(['host-tablet']);
  });

  it('is eight devices at most; the next one hears of the other link, and comes in when one has gone', async () => {
    const { made, host, noor } = await away.evening();
    await join(host, 'host-tablet');
    const guests = [noor];
    for (let count = 0; count < 7; count += 1)
      guests.push(await atHome(await house.guest(made, `Guest ${count}`)));
    for (const [index, guest] of guests.slice(0, 7).entries())
      expect(await join(guest, `number-${index}`)).toMatchObject({ ok: true });
    const ninth = guests[7] as Guest;
    const answer = (await join(ninth, 'number-nine')) as Refusal;
    expect(answer).toEqual(refused('call-full'));
    expect(answer.message).toContain('link');
    await ask(noor, { type: 'Leave' });
    expect(await join(ninth, 'number-nine')).toMatchObject({ ok: true });
  });

  it('has one device of each seat: another one takes its place, and the first is silent', async () => {
    const { made, host, noor } = await away.evening();
    await join(host, 'host-tablet');
    await join(noor, 'noor-phone');
    const laptop = await house.enter(credentials('guest', made.tasting, noor.key));
    expect(await join(laptop, 'noor-laptop')).toMatchObject({ ok: true });
    await inCall(noor, 'host-tablet', 'noor-laptop');
    expect(await signal(noor, 'host-tablet')).toEqual(refused('not-in-call'));
    const tablet = await house.host(made);
    await join(tablet, 'other-tablet');
    await inCall(host, 'noor-laptop', 'other-tablet');
  });

  it('has the screens that were let in, one of them as the camera at the table', async () => {
    const tonight = await away.evening();
    const television = await away.screenOf(tonight);
    const camera = await away.screenOf(tonight);
    await join(television, 'television');
    await join(camera, 'room-camera', { as: 'room' });
    const { peers } = await inCall(camera, 'television', 'room-camera');
    expect(peers.map(({ role, seat, name }) => ({ role, seat, name }))).toEqual([
      { role: 'screen', seat: null, name: null },
      { role: 'room', seat: null, name: null },
    ]);
    expect(await join(tonight.noor, 'guest-as-room', { as: 'room' })).toMatchObject({ ok: true });
    expect((await inCall(camera, 'television', 'room-camera', 'guest-as-room')).peers[2]?.role).toBe('guest');
  });
});

describe('[V8] what devices tell each other', () => {
  it('goes from one to the other alone, also when both begin at once', async () => {
    const { host, noor, tomas } = await away.evening();
    for (const [device, peer] of [
      [host, 'host-tablet'],
      [noor, 'noor-phone'],
      [tomas, 'tomas-phone'],
    ] as const)
      await join(device, peer);
    await Promise.all([signal(host, 'noor-phone', 'v=0 host'), signal(noor, 'host-tablet', 'v=0 noor')]);
    expect(await noor.until('call-signal')).toEqual({
      from: 'peer-host-tablet',
      signal: { is: 'offer', sdp: 'v=0 host' },
    });
    expect(await host.until('call-signal')).toMatchObject({ from: 'peer-noor-phone' });
    const candidates = [{ candidate: 'candidate:1', sdpMid: '0', sdpMLineIndex: 0, usernameFragment: 'u' }];
    expect(
      await ask(noor, { type: 'Signal', to: 'peer-host-tablet', signal: { is: 'candidates', candidates } }),
    ).toEqual({
      ok: true,
    });
    await host.until('call-signal', (told) => told.signal.is === 'candidates');
    await tomas.level();
    expect(tomas.count('call-signal')).toBe(0);
  });

  it('is refused with a sentence from who is not in the call, to oneself, and when it is too much', async () => {
    const { host, noor, tomas } = await away.evening();
    await join(host, 'host-tablet');
    expect(await signal(noor, 'host-tablet')).toEqual(refused('not-in-call'));
    expect(await ask(noor, { type: 'Show', shown: closed })).toEqual(refused('not-in-call'));
    expect(await ask(noor, { type: 'Leave' })).toEqual(refused('not-in-call'));
    expect(await signal(host, 'host-tablet')).toEqual(refused('no-such-peer'));
    await join(tomas, 'tomas-phone');
    expect(await signal(tomas, 'host-tablet', 'x'.repeat(longestDescription + 1))).toEqual(
      refused('too-large'),
    );
    const many = Array(21).fill({ candidate: 'c', sdpMid: null, sdpMLineIndex: null });
    expect(
      await ask(tomas, {
        type: 'Signal',
        to: 'peer-host-tablet',
        signal: { is: 'candidates', candidates: many },
      }),
    ).toEqual(refused('too-large'));
    for (const odd of [
      { type: 'Signal', to: 'peer-host-tablet', signal: { notes: 'x' } },
      { type: 'Listen' },
      7,
    ])
      expect(await ask(tomas, odd as object)).toEqual(refused('malformed'));
    await host.level();
    expect(host.count('call-signal')).toBe(0);
  });

  it('[Q1] has nothing of notes in it, and does not move when one is written, shared or picked', async () => {
    const { host, noor, tomas } = await away.evening();
    for (const [device, peer] of [
      [host, 'host-tablet'],
      [noor, 'noor-phone'],
      [tomas, 'tomas-phone'],
    ] as const)
      await join(device, peer);
    await signal(noor, 'tomas-phone');
    await tomas.until('call-signal');
    const heard = () => [host, tomas].map((each) => [each.count('call'), each.count('call-signal')]);
    const before = heard();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    expect(await noor.save({ value: 'only mine' })).toMatchObject({ ok: true });
    await noor.consent({ order: 'counts' });
    await Promise.all([host.level(), tomas.level()]);
    expect(heard()).toEqual(before);
    expect([host, tomas].flatMap(({ frames }) => frames).join()).not.toContain('only mine');
    expect(house.log.lines.join()).not.toContain('v=0');
  });

  it('ends the line of who sends 200 kB, and nobody else hears of it', async () => {
    const { host, noor, tomas } = await away.evening();
    await join(host, 'host-tablet');
    await join(noor, 'noor-phone');
    await join(tomas, 'tomas-phone');
    void signal(noor, 'host-tablet', 'x'.repeat(200_000)).catch(() => undefined);
    await noor.dismissed();
    await clock.advance(2500);
    await inCall(host, 'host-tablet', 'tomas-phone');
    expect(await signal(tomas, 'host-tablet')).toEqual({ ok: true });
  });

  it('is so much for each place and no more, which nobody else feels', async () => {
    const { host, noor, tomas } = await away.evening();
    await join(host, 'host-tablet');
    await join(noor, 'noor-phone');
    await join(tomas, 'tomas-phone');
    const answers = await Promise.all(Array.from({ length: 115 }, () => signal(noor, 'host-tablet')));
    expect(answers.filter(({ ok }) => ok)).toHaveLength(100);
    expect(answers.at(-1)).toEqual(refused('too-fast'));
    // What it shows is told to all, and counts like what it says to one.
    const before = host.count('call');
    expect(await ask(noor, { type: 'Show', shown: closed })).toEqual(refused('too-fast'));
    expect(await signal(tomas, 'host-tablet')).toEqual({ ok: true });
    expect(host.count('call')).toBe(before);
  });

  it('takes ten rejoins in a minute and no flood of them', async () => {
    const { host, noor } = await away.evening();
    await join(host, 'host-tablet');
    for (let count = 0; count < 10; count += 1) {
      expect(await join(noor, `noor-phone-${count}`)).toMatchObject({ ok: true });
      await clock.advance(6000);
    }
    await inCall(host, 'host-tablet', 'noor-phone-9');
    const answers = await Promise.all(
      Array.from({ length: 20 }, (_, index) => join(noor, `noor-again-${index}`)),
    );
    expect(answers.filter(({ ok }) => !ok).length).toBeGreaterThan(5);
    expect(answers.at(-1)).toEqual(refused('too-fast'));
  });
});
