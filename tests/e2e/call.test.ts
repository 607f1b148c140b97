import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { createTasting } from '../support/tasting.ts';
import { flowOf, flowWithin, keepConnections } from './call-media.ts';
import { Guest } from './guest.ts';
import { Host } from './host.ts';
import { Premises } from './premises.ts';

/** Two guests at home and the host's tablet, with the cameras and microphones that Chromium makes up. */
const plan = planSchema.parse({
  ...demoEvening,
  remoteGuests: 2,
  callLink: 'https://call.example/six-lanterns',
});
const cues = compile(plan);
/** Through the first glass, without the step with eyes closed. */
const first = cues.find(({ kind }) => kind === 'step')?.id.split('/')[0];
const silentCues = ['first/swirl', 'first/look', 'first/spit', 'writing/write/look', 'water'].map(
  (step) => `${first}/${step}`,
);
let premises: Premises;
let host: Host;
let lark: Guest;
let wren: Guest;
let at = 0;

beforeAll(async () => {
  premises = await Premises.open({ fakeMedia: true });
  const { tasting, code, hostKey } = await createTasting(premises, plan);
  host = await Host.arrives(premises.browser, premises.room.origin, premises.houseKey);
  const { page } = host.person;
  await page.addInitScript(keepConnections);
  await page.goto('about:blank');
  await page.goto(`${premises.room.origin}/host#tasting=${tasting}&key=${hostKey}`);
  await page.goto(`${premises.room.origin}/host#/t/${tasting}/doors`);
  await host.openDoors();
  [lark, wren] = [
    await Guest.arrives(premises.browser, 'Lark', 'light', 'phone'),
    await Guest.arrives(premises.browser, 'Wren', 'light', 'phone'),
  ];
  for (const guest of [lark, wren]) {
    await guest.person.page.addInitScript(keepConnections);
    await guest.person.page.goto(`${premises.room.origin}/j/${code}`);
    await guest.sitsDown({ atHome: true });
    await guest.readsCautions();
  }
  await host.goAndConduct();
});
afterAll(() => premises?.close());

const people = () => [host.person, lark.person, wren.person];
const turnOn = async (person: Guest['person'], device: 'microphone' | 'camera'): Promise<void> => {
  await person.button(words[device].closed).click();
  await person.button(words[device].open).waitFor();
};
const sends = async (person: Guest['person']): Promise<boolean> => {
  const { energySent, voicePacketsSent } = await flowWithin(person.page, 600);
  return energySent > 0 || voicePacketsSent > 0;
};

async function leadTo(id: string): Promise<void> {
  while (cues[at]?.id !== id) {
    at += 1;
    const next = cues[at];
    if (next === undefined) throw new Error(`There is no cue ${id} ahead.`);
    await host.next(next);
  }
}

describe('the evening’s call', () => {
  it('[V4] opens no camera and no microphone by itself, and pictures come with a tap', async () => {
    await lark.person.look('call-phone-out');
    for (const person of people()) await person.button(words.join).click();
    for (const person of people()) {
      await person.button(words.camera.closed).waitFor();
      await expect.poll(async () => (await flowOf(person.page)).connected).toBe(2);
      expect(await flowWithin(person.page, 500)).toMatchObject({
        frames: 0,
        pictureBytesSent: 0,
        energySent: 0,
      });
    }
    for (const person of people()) await turnOn(person, 'camera');
    for (const person of people())
      await expect.poll(async () => (await flowWithin(person.page, 500)).frames).toBeGreaterThan(8);
    await turnOn(host.person, 'microphone');
    await turnOn(lark.person, 'microphone');
    await expect.poll(async () => (await flowWithin(wren.person.page, 500)).energyHeard).toBeGreaterThan(0);
    await lark.person.look('call-phone-gathering');
    await host.person.look('call-tablet-gathering');
  });

  it('[V1] lets no sound out of a guest’s microphone in silence, and the host’s stays', async () => {
    const tops = new Set<number | undefined>();
    for (const id of silentCues) {
      await leadTo(id);
      tops.add((await lark.person.page.locator('.room').boundingBox())?.y);
      // What was open is closed when the cue shows; what was on the way then has arrived.
      await lark.person.page.waitForTimeout(300);
      const [ofLark, ofWren, ofHost] = await Promise.all(
        people().map(({ page }) => flowWithin(page, 500)),
      ).then(([host, one, other]) => [one, other, host]);
      for (const flow of [ofLark, ofWren])
        expect({ id, ...flow }).toMatchObject({ id, energySent: 0, voicePacketsSent: 0 });
      expect(ofHost?.energySent).toBeGreaterThan(0);
      expect(ofLark?.voicePacketsHeard).toBeGreaterThan(0);
      if (id.endsWith('first/look')) await lark.person.look('call-phone-look');
      if (id.endsWith('first/swirl')) {
        await lark.person.look('call-phone-silence');
        await host.person.look('call-tablet-silence');
      }
    }
    // [V2] A white card has come and gone meanwhile, and moved nothing.
    expect([...tops]).toEqual([expect.any(Number)]);
  });

  it('[V2] makes every picture dark while eyes are closed, and brings them back', async () => {
    const nose = cues.findIndex(({ id }, index) => index > at && id.endsWith('/nose'));
    await leadTo(cues[nose]?.id ?? '');
    await lark.person.look('call-phone-nose');
    for (const person of people()) {
      await expect.poll(async () => (await flowWithin(person.page, 400)).pictureBytesSent).toBe(0);
      expect(await person.page.locator('video').count()).toBe(0);
    }
    expect(await sends(host.person)).toBe(true);
    const [next] = cues.slice(nose + 1);
    await leadTo(next?.id ?? '');
    await expect.poll(async () => (await flowWithin(lark.person.page, 500)).frames).toBeGreaterThan(0);
  });

  it('[V5] lets a raised hand speak to the host alone, while the button is held', async () => {
    const { person } = lark;
    await person.button(guestWords.signals.needsHost).click();
    const press = person.button(words.press);
    await press.waitFor();
    await host.person.page.locator('.room-table .asks').waitFor();
    const before = { host: await flowOf(host.person.page), wren: await flowOf(wren.person.page) };
    await press.dispatchEvent('pointerdown', { pointerId: 1 });
    await expect.poll(() => sends(person)).toBe(true);
    await expect
      .poll(async () => (await flowOf(host.person.page)).voicePacketsHeard)
      .toBeGreaterThan(before.host.voicePacketsHeard);
    await person.look('call-phone-press');
    await press.dispatchEvent('pointerup', { pointerId: 1 });
    await expect.poll(() => sends(person)).toBe(false);
    await person.button(guestWords.signals.needsHost).click();
    await person.button(words.microphone.closed).waitFor();
  });

  it('[V6] takes who vanishes out of every picture within five seconds', async () => {
    await wren.person.leaves();
    const gone = Date.now();
    for (const person of [host.person, lark.person])
      await expect.poll(() => person.page.locator('.call-tile', { hasText: 'Wren' }).count()).toBe(0);
    expect(Date.now() - gone).toBeLessThan(5000);
  });

  it('[V6] goes on when the server falls, with every microphone as it was, and mends itself', async () => {
    const both = [host.person, lark.person];
    for (const person of both) person.lineMayFail = true;
    await premises.powerCut();
    for (const person of both) {
      await expect.poll(async () => (await flowWithin(person.page, 500)).frames).toBeGreaterThan(0);
    }
    expect(await sends(lark.person)).toBe(false);
    expect(await sends(host.person)).toBe(true);
    await premises.serve();
    await host.person.text(hostWords.link.live).waitFor();
    await lark.person.page.waitForTimeout(1000);
    for (const person of both) {
      expect((await flowOf(person.page)).connected).toBe(1);
      expect((await flowWithin(person.page, 500)).frames).toBeGreaterThan(0);
    }
    expect(await sends(lark.person)).toBe(false);
  });

  it('says nothing was wrong on any screen', () => {
    expect(people().flatMap(({ faults }) => faults)).toEqual([]);
  });
});
