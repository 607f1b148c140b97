import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Refusal } from '../../shared/wire/protocol.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials, type Device } from './support/device.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';

let house: House;
let clock: ManualClock;
beforeEach(async () => {
  clock = new ManualClock();
  house = await House.open({ clock, store: memoryStore() });
});
afterEach(() => house.close());

describe('the devices of one seat', () => {
  it('ask so much together, and no other seat is slowed down by it', async () => {
    const { made, noor, tomas } = await house.evening();
    const devices = [noor, await house.enter(credentials('guest', made.tasting, noor.key))];
    const answers = await Promise.all(
      Array.from({ length: 300 }, (_, index) => devices[index % 2]?.raw('probe', { roundTrip: null })),
    );
    expect(answers.filter((answer) => (answer as Refusal).code === 'too-fast')).toHaveLength(180);
    expect(await tomas.raw('probe', { roundTrip: 3 })).toHaveProperty('received');
    await clock.advance(1000);
    expect(await noor.raw('probe', { roundTrip: 3 })).toHaveProperty('received');
  });

  it('are five: the newest is let in, and the one goes that was silent for longest', async () => {
    const { made, noor, tomas } = await house.evening();
    const shown = credentials('guest', made.tasting, noor.key);
    const others: Device[] = [];
    for (let count = 0; count < 4; count += 1) others.push(await house.enter(shown));
    await clock.advance(1000);
    for (const each of [noor, ...others.slice(1)]) await each.level();
    const sixth = await house.enter(shown);
    expect(await others[0]?.dismissed()).toBe('too-many-devices');
    for (const each of [noor, ...others.slice(1), sixth, tomas]) await each.level();
  });

  it('are let go when they flood, and come back only so often', async () => {
    const { made, host, noor, tomas } = await house.evening();
    for (let count = 0; count < 1000; count += 1)
      void noor.raw('probe', { roundTrip: null }).catch(() => null);
    await noor.dismissed();
    const shown = credentials('guest', made.tasting, noor.key);
    const said: string[] = [];
    for (let count = 0; count < 40; count += 1)
      void house.enter(shown).then(
        (device) => {
          said.push('in');
          device.close();
        },
        ({ code }: Refusal) => said.push(code),
      );
    // Told at once they would be back at once: who comes too often waits for the answer.
    await expect.poll(() => said.length).toBe(14);
    await clock.advance(1900);
    await tomas.level();
    expect(said).toEqual(Array(14).fill('in'));
    await expect
      .poll(async () => {
        await clock.advance(100);
        return said.slice(14);
      })
      .toEqual(Array(26).fill('too-fast'));
    await tomas.level();
    await host.level();
    await clock.advance(4000);
    await (await house.enter(shown)).until('seat');
  });
});

describe('a whole table', () => {
  it('of two hundred behind one router sits down at once, and comes back at once after a restart', async () => {
    const { made } = await house.evening();
    const guests = await Promise.all(Array.from({ length: 198 }, () => house.guest(made)));
    for (const guest of guests) guest.close();
    const again = await Promise.all(
      guests.map(({ key }) => house.enter(credentials('guest', made.tasting, key))),
    );
    // Each with the probes of a page that has just connected.
    const probes = again.flatMap((device) =>
      Array.from({ length: 8 }, () => device.raw('probe', { roundTrip: 3 })),
    );
    for (const answer of await Promise.all(probes)) expect(answer).toHaveProperty('received');
  });
});
