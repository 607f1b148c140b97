import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { credentials } from './support/device.ts';
import { House } from './support/house.ts';
import { aPlan } from './support/plans.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

describe('joining and following', () => {
  it('brings a guest level in one burst and takes them along [F2]', async () => {
    const { host, noor } = await house.evening();
    const stage = await noor.until('stage');
    expect(stage).toMatchObject({
      status: 'under-way',
      title: 'Peat and patience',
      cue: { id: 'gathering' },
    });
    await noor.until('board');
    expect(noor.heard.slice(0, 5).map(({ event }) => event)).toEqual([
      'seat',
      'notebook',
      'devices',
      'stage',
      'board-change',
    ]);

    const before = host.last('host')?.version ?? 0;
    const answer = await host.host({ type: 'Advance', from: 'gathering' });
    expect(answer.ok && answer.version > before).toBe(true);
    const next = await noor.until('stage', (view) => view.version > before);
    expect(next).toMatchObject({ cue: { id: 'welcome' }, version: answer.ok && answer.version });
  });

  it('shows a host the room before and after the doors are open', async () => {
    const made = await house.plan();
    const host = await house.host(made);
    await host.until('presence', ({ hosts }) => hosts === 1);
    expect(host.count('host')).toBe(0);
    await host.host({ type: 'OpenDoors' });
    expect(await host.until('host')).toMatchObject({ cue: 'gathering', next: 'welcome', seats: [] });
    expect((await host.until('running-order')).cues.length).toBeGreaterThan(10);
    await house.guest(made, 'Noor');
    await host.until('host', ({ seats }) => seats[0]?.name === 'Noor');
    await host.until('presence', ({ seats }) => seats.length === 1);
    expect(host.count('running-order')).toBe(1);
  });

  it('lets a room screen see the stage and nothing of anybody', async () => {
    const { made, host } = await house.evening();
    const screen = await house.enter(credentials('screen', made.tasting, made.hostKey));
    await screen.until('stage');
    await host.host({ type: 'Advance', from: 'gathering' });
    await screen.until('stage', (view) => view.status === 'under-way' && view.cue.id === 'welcome');
    expect(new Set(screen.heard.map(({ event }) => event))).toEqual(
      new Set(['stage', 'news', 'screen', 'board', 'board-change']),
    );
  });

  it('sends a view only when it says something new', async () => {
    const { host, noor, tomas } = await house.evening();
    await host.host({ type: 'Advance', from: 'gathering' });
    for (const device of [noor, tomas]) await device.until('stage', ({ version }) => version > 3);
    const before = [noor.count('stage'), tomas.heard.length, host.count('running-order')];
    await noor.guest({ type: 'GiveSignal', signal: 'needs-host', cue: 'welcome' });
    await noor.until('seat', ({ signal }) => signal === 'needs-host');
    await host.until('host', ({ seats }) => seats[0]?.signal === 'needs-host');
    for (const device of [host, noor, tomas]) await device.level();
    expect([noor.count('stage'), tomas.heard.length, host.count('running-order')]).toEqual(before);
  });

  it('tells each seat of its own glass when every seat has an order of its own', async () => {
    const rows = [
      ['one', 'two', 'three'],
      ['three', 'one', 'two'],
    ];
    const plan = aPlan({
      blind: true,
      ownOrders: true,
      flightSizes: [3],
      codes: { one: '417', two: '902', three: '388' },
      servingOrders: [{ rows }],
    });
    const { host, noor, tomas } = await house.evening(plan);
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    expect((await noor.until('seat', ({ served }) => served?.[0] != null)).served?.[0]?.id).toBe('one');
    expect((await tomas.until('seat', ({ served }) => served?.[0] != null)).served?.[0]?.id).toBe('three');
    expect(await tomas.save({ pour: 'three', value: 'mine' })).toMatchObject({ ok: true });
    expect(await tomas.save({ pour: 'one', value: 'not mine yet' })).toMatchObject({ code: 'not-reached' });
  });

  it('measures how far ahead a change must be set by the round trips of the room [F4]', async () => {
    const { host, noor, tomas } = await house.evening();
    const ahead = async (from: string) => {
      // The server's clock is not this one, and may be a millisecond behind it.
      const asked = Date.now();
      await host.host({ type: 'Advance', from });
      const view = await noor.until(
        'stage',
        (stage) => stage.status === 'under-way' && stage.cue.id !== from,
      );
      return view.status === 'under-way' ? view.takesEffectAt - asked : 0;
    };
    expect(await ahead('gathering')).toBeGreaterThanOrEqual(149);
    for (const device of [noor, tomas, host]) await device.raw('probe', { roundTrip: 900 });
    expect(await ahead('welcome')).toBeGreaterThanOrEqual(399);
  });

  it('gives the second device of a guest the same seat, and each what the other writes', async () => {
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    const issued = await house.ask<{ key: string }>('POST', '/api/devices/links', { key: noor.key });
    const laptop = await house.enter(credentials('guest', made.tasting, issued.body.key));
    expect((await laptop.until('seat')).seat).toBe(noor.seat);
    await noor.save({ value: 'apples' });
    await laptop.until('notebook', ({ entries }) => entries[0]?.value === 'apples');
    await laptop.save({ value: 'smoke', base: 0 });
    const both = await noor.until('notebook', ({ entries }) => entries[0]?.value !== 'apples');
    expect(both.entries[0]?.value).toBe('apples\nsmoke');
  });
});
