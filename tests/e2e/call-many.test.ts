import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { callWords as words } from '../../shared/language/en/call.ts';
import { callRefusals } from '../../shared/language/en/call-refusals.ts';
import { atHome, join } from '../server/support/callers.ts';
import { CallEvening, joins, turnOn } from './call-evening.ts';
import { flowOf, flowWithin } from './call-media.ts';
import type { Guest } from './guest.ts';
import type { Person } from './person.ts';

/** A full call: three browsers whose pictures run, five devices that only hold their places, and one too many. */
let evening: CallEvening;
let host: Person;
let lark: Guest;
let wren: Guest;

beforeAll(async () => {
  evening = await CallEvening.open();
  host = await evening.host();
  lark = await evening.guest('Lark');
  wren = await evening.guest('Wren');
  for (const person of [host, lark.person, wren.person]) {
    await joins(person);
    await turnOn(person, 'camera');
  }
});
afterAll(() => evening?.close());

const pictureCame = ({ page }: Person) =>
  expect.poll(async () => (await flowWithin(page, 400)).frames).toBeGreaterThan(0);

describe('a full call', () => {
  it('[V7] tells the ninth device in a sentence to use the other link, and its pictures go on', async () => {
    for (let count = 0; count < 5; count += 1)
      expect(
        await join(await atHome(await evening.house.guest(evening.made, `Guest ${count}`)), `still-${count}`),
      ).toMatchObject({ ok: true });
    await host.page.locator('.call-tile').nth(6).waitFor();
    const ninth = await evening.guest('Ninth');
    await ninth.person.button(words.join).click();
    await ninth.person.text(new RegExp(callRefusals['call-full'])).waitFor();
    await ninth.person.page.getByRole('link', { name: words.other }).first().waitFor();
    expect(await flowOf(ninth.person.page)).toMatchObject({ connected: 0 });
    await ninth.person.look('call-phone-full');
    await host.look('call-tablet-full');
    await lark.person.look('call-phone-eight');
    for (const person of [host, lark.person, wren.person]) {
      await pictureCame(person);
      expect((await flowOf(person.page)).connected).toBe(2);
    }
    expect(ninth.person.faults).toEqual([]);
  });

  it('[V6] takes back somebody who leaves and comes ten times in a row, with one line each', async () => {
    const { person } = wren;
    for (let time = 0; time < 10; time += 1) {
      await person.button(words.more).click();
      await person.button(words.leave).click();
      await joins(person);
    }
    await turnOn(person, 'camera');
    for (const each of [host, lark.person, person]) {
      await expect.poll(async () => (await flowOf(each.page)).connected).toBe(2);
      await pictureCame(each);
    }
    expect(await host.page.locator('.call-tile', { hasText: 'Wren' }).count()).toBe(1);
  });

  it('says nothing was wrong on any screen', () => {
    expect([host, lark.person, wren.person].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
