import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { documentWords } from '../../shared/language/en/document.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { planWords } from '../../shared/language/en/plan.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { aPlan } from '../server/support/plans.ts';
import { lendBrowser } from '../support/browser.ts';
import { forgetNewerMethods, forgetOurLayout, refuseStorage } from '../support/older-browser.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { Guest } from './guest.ts';
import { Person } from './person.ts';

/**
 * The pages in a browser that knows no more methods than those of 2021, six times slower than this machine. The layout
 * is today's: what styles ask for is held against published data by another test.
 */
const plan = aPlan({ ranking: 'at-the-end', liking: true });
const cues = compile(plan);
let browser: Browser;
let house: House;
let made: CreatedTasting;
let host: Device;

beforeAll(async () => {
  browser = await lendBrowser({ before: forgetNewerMethods });
  house = await House.open();
  made = await house.plan(aPlan());
  host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

/**
 * Slows a page down; a page that is slow keeps a core busy, also while it has nothing to do.
 *
 * @returns lets the page run at its own speed while a test looks at it
 */
async function slow(person: Person): Promise<(look: () => Promise<void>) => Promise<void>> {
  const session = await person.page.context().newCDPSession(person.page);
  const runAt = (rate: number) => session.send('Emulation.setCPUThrottlingRate', { rate });
  await runAt(6);
  return async (look) => {
    await runAt(1);
    await look();
    await runAt(6);
  };
}

/** At letters of 200 %, in the colours that a system forces on every page. */
async function looksLarge(person: Person, name: string): Promise<void> {
  const size = (percent: string) =>
    person.page.evaluate((each) => {
      document.documentElement.style.fontSize = each;
    }, percent);
  await size('200%');
  await person.page.emulateMedia({ forcedColors: 'active' });
  await person.photograph(name);
  expect.soft(await person.overflow(), `${name} slides sideways`).toBe(0);
  await person.page.emulateMedia({ forcedColors: 'none' });
  await size('');
}

describe('a browser of 2021', () => {
  it('sits down, follows, writes and shares to the end, on a small phone and where nothing may be kept', async () => {
    const evening = await house.plan(plan);
    const conductor = await house.host(evening);
    await conductor.host({ type: 'OpenDoors' });
    const slowly = await Guest.arrives(browser, 'Ottilie', 'light', 'small');
    const keepsNothing = await Guest.arrives(browser, 'Per', 'dark');
    const both = [slowly, keepsNothing];
    const atItsSpeed = await slow(slowly.person);
    await keepsNothing.person.page.addInitScript(refuseStorage);
    for (const guest of both) {
      await guest.person.page.goto(`${house.url}/j/${evening.code}`);
      await guest.sitsDown();
      await guest.readsCautions();
      await guest.person.heading(cueWords.gathering.verb, 1).waitFor();
    }
    // One cue of each kind, with a picture at letters twice as large and in the system's own colours.
    const seen = new Set<string>();
    for (const cue of cues) {
      const screen = cue.kind === 'step' ? `${cue.step}-${cue.sense}` : cue.kind;
      if (seen.has(screen)) continue;
      seen.add(screen);
      await conductor.host({ type: 'JumpTo', cue: cue.id });
      for (const guest of both) await guest.isAt(cue);
      if (cue.kind === 'step' && cue.sense === 'nose') {
        for (const guest of both) {
          await guest.writes('nose', `smoke and salt of ${guest.person.name}`);
          await guest.seesSaved();
          await guest.putsPenDown();
        }
        await atItsSpeed(() => slowly.person.look('older-guest-write'));
        await keepsNothing.person.page.reload();
        await keepsNothing.isAt(cue);
        expect(await keepsNothing.field('nose').inputValue()).toBe('smoke and salt of Per');
      }
      if (cue.kind === 'discussion') {
        await conductor.host({ type: 'OpenDiscussion', pours: [...cue.pours] });
        for (const guest of both) await guest.answersQuestion('named');
        for (const { person } of both) await person.text('smoke and salt of Ottilie').first().waitFor();
      }
      await atItsSpeed(() => looksLarge(slowly.person, `older-guest-${screen}`));
    }
    await conductor.host({ type: 'Finish' });
    for (const { person } of both) {
      await person.heading(guestWords.keepsake.title, 1).waitFor();
      await person.text(`smoke and salt of ${person.name}`).first().waitFor();
      expect(person.faults).toEqual([]);
      await person.leaves();
    }
  });

  it('shows the evening to the room', async () => {
    const screen = await Person.arrives(browser, 'screen', 'wide');
    await screen.page.goto(`${house.url}/screen/${made.code}`);
    const { screensAsking } = await host.until('presence', (presence) => presence.screensAsking.length === 1);
    await house.ask('POST', `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`, {
      key: made.hostKey,
      body: { admit: true },
    });
    await screen.page.getByRole('heading', { level: 1 }).waitFor();
    await screen.look('older-screen');
    expect(screen.faults).toEqual([]);
    await screen.leaves();
  });

  it('plans and conducts, with a dialog that is a box over the page', async () => {
    const tablet = await Person.arrives(browser, 'host', 'tablet');
    const atItsSpeed = await slow(tablet);
    await tablet.page.goto(`${house.url}/host#tasting=${made.tasting}&key=${made.hostKey}`);
    await tablet.page.goto(`${house.url}/host#/t/${made.tasting}/room`);
    await tablet.button(hostWords.tools.glasses).click();
    const drawer = tablet.page.getByRole('dialog');
    await drawer.waitFor();
    await atItsSpeed(() => tablet.look('older-host-drawer'));
    expect(tablet.faults).toEqual([]);
    await tablet.leaves();
  });
});

it('leaves the sentence of its page standing in a browser from before', async () => {
  const older = await lendBrowser({ before: forgetOurLayout });
  for (const [address, words] of [
    [`/j/${made.code}`, 'guestTooOld'],
    ['/host', 'hostTooOld'],
  ] as const) {
    const person = await Person.arrives(older, 'somebody', 'phone');
    await person.page.goto(house.url + address);
    await person.page.waitForLoadState('networkidle');
    await person.text(documentWords[words]).waitFor();
    const path = join(import.meta.dirname, `../screenshots/before-our-floor-${words}.png`);
    await person.page.screenshot({ path });
    expect(person.faults).toEqual([]);
  }
  await older.close();
});

it('keeps every key that is typed into a number, at any speed', async () => {
  const tablet = await Person.arrives(browser, 'host', 'tablet');
  const planned = await house.plan(aPlan());
  await tablet.page.goto(`${house.url}/host#tasting=${planned.tasting}&key=${planned.hostKey}`);
  await tablet.page.getByRole('heading', { level: 1 }).waitFor();
  await tablet.page.goto(`${house.url}/host#/t/${planned.tasting}/plan`);
  await tablet
    .button(new RegExp(`^${planWords.parts.pours}`))
    .first()
    .click();
  await tablet.page.locator('.pour-line').first().getByRole('button').first().click();
  const field = tablet.page.getByRole('textbox', { name: planWords.pour.abv });
  await field.waitFor();
  const random = seededRandom(20);
  for (let round = 0; round < 30; round += 1) {
    const keys = Array.from({ length: 3 + Math.floor(random() * 3) }, (_, place) =>
      place === 2 ? [',', '.'][Math.floor(random() * 2)] : String(1 + Math.floor(random() * 4)),
    );
    const pauses = keys.map(() => [0, 3, 20, 120][Math.floor(random() * 4)]);
    await field.fill('');
    await field.evaluate(type, { keys, pauses });
    expect(await field.inputValue()).toBe(keys.join(''));
  }
});

/** Adds key by key to what the field shows, as a keyboard does, so many ms apart: some come before the page is painted. */
async function type(
  field: SVGElement | HTMLElement,
  {
    keys,
    pauses,
  }: { readonly keys: readonly (string | undefined)[]; readonly pauses: readonly (number | undefined)[] },
): Promise<void> {
  const input = field as HTMLInputElement;
  for (const [place, key] of keys.entries()) {
    input.value += key;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await new Promise((resolve) => setTimeout(resolve, pauses[place]));
  }
}
