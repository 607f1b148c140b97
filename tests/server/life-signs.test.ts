import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Device } from './support/device.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';

let house: House;
let clock: ManualClock;
beforeEach(async () => {
  clock = new ManualClock();
  house = await House.open({ clock });
});
afterEach(() => house.close());

/** When each packet without a word came, in ms. */
function signsTo(device: Device): number[] {
  const at: number[] = [];
  device.socket.io.engine.on('packet', ({ type }: { type: string }) => {
    if (type === 'noop') at.push(performance.now());
  });
  return at;
}
const pass = (ms: number) => new Promise((done) => setTimeout(done, ms));

describe('a sign that the line lives', () => {
  it('comes to all who follow while a cue runs, sooner than pages ask for one', async () => {
    const { host, noor, tomas } = await house.evening();
    const began = performance.now();
    const signs = [host, noor, tomas].map(signsTo);
    for (const each of signs) await expect.poll(() => each.length, { timeout: 15_000 }).toBeGreaterThan(2);
    const [toNoor = []] = signs.slice(1);
    expect(toNoor.length).toBeLessThanOrEqual(1 + Math.ceil((performance.now() - began) / 1500));
  }, 20_000);

  it('does not come while the host holds, nor once the time of the cue is over', async () => {
    const { host, noor } = await house.evening();
    await host.host({ type: 'Hold' });
    await noor.level();
    const held = signsTo(noor);
    await pass(2000);
    expect(held).toEqual([]);
    await host.host({ type: 'Resume' });
    await expect.poll(() => held.length, { timeout: 10_000 }).toBeGreaterThan(0);
    await clock.advance(60 * 60_000);
    await noor.level();
    const before = held.length;
    await pass(2000);
    expect(held.length).toBe(before);
  }, 25_000);

  it('says nothing to who waits at the door, of whom the room knows nothing yet', async () => {
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'SetDoors', doors: 'ask' });
    const waiting = await house.guest(made, 'Late');
    expect(waiting.last('seat')?.presence).toBe('waiting');
    const [atDoor, inside] = [signsTo(waiting), signsTo(noor)];
    await expect.poll(() => inside.length, { timeout: 10_000 }).toBeGreaterThan(1);
    expect(atDoor).toEqual([]);
  }, 15_000);

  it('[Q1] comes to others whether somebody writes and gives consents or not', async () => {
    const { host, noor, tomas } = await house.evening();
    const signs = [host, tomas].map(signsTo);
    const heard = signsTo(noor);
    let writes = true;
    const writing = (async () => {
      for (let base = 0; writes; base += 1) {
        await noor.save({ value: `malt ${base}`, base });
        await noor.consent({ page: { sharing: base % 2 ? 'named' : 'private', parts: [] } });
        await pass(20);
      }
    })();
    try {
      // Who writes hears the same signs too: answers to one are no news to the room.
      for (const each of [...signs, heard])
        await expect.poll(() => each.length, { timeout: 10_000 }).toBeGreaterThan(1);
    } finally {
      writes = false;
      await writing;
    }
  }, 25_000);
});
