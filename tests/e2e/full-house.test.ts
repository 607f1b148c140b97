import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { boardWords } from '../../shared/language/en/board.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords as words } from '../../shared/language/en/host.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { lendBrowser } from '../support/browser.ts';
import { crowding } from './crowding.ts';
import { type FullHouse, fillHouse, longNames } from './full-house.ts';
import { Guest } from './guest.ts';
import { Person } from './person.ts';

/**
 * Forty guests, sixteen pours and names as long as they may be, on every size of screen: what slides sideways, is cut
 * off or lies on something else is a fault.
 */
let browser: Browser;
let full: FullHouse;
let host: Person;
let guest: Guest;

beforeAll(async () => {
  browser = await lendBrowser();
  full = await fillHouse();
  const { house, made } = full;
  host = await Person.arrives(browser, 'host', 'tablet');
  await host.page.goto(`${house.url}/host#tasting=${made.tasting}&key=${made.hostKey}`);
  await host.page.getByRole('heading', { level: 1 }).waitFor();
  guest = await Guest.arrives(browser, longNames[0], 'dark', 'small');
  await guest.person.page.goto(`${house.url}/j/${made.code}`);
});
afterAll(async () => {
  await browser?.close();
  await full?.house.close();
});

interface Screen {
  readonly width: number;
  readonly height: number;
  /** Of the usual size of letters. */
  readonly percent: number;
}
const screen = (width: number, height: number, percent = 100): Screen => ({ width, height, percent });
const tablets = [screen(1024, 768), screen(1180, 820), screen(1280, 800), screen(390, 844)];
const phones = [screen(320, 568), screen(360, 640, 200), screen(844, 390), screen(320, 568, 200)];

async function fits(person: Person, name: string, screens: readonly Screen[]): Promise<void> {
  const { page } = person;
  for (const { width, height, percent } of screens) {
    await page.setViewportSize({ width, height });
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, `${percent}%`);
    const shown = `full-${name}-${width}x${height}${percent === 100 ? '' : `-${percent}`}`;
    await person.photograph(shown);
    expect.soft(await person.overflow(), `${shown} slides sideways`).toBe(0);
    expect.soft(await crowding(page), shown).toEqual([]);
  }
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '';
  });
}

const open = (page: string) => host.page.goto(`${full.house.url}/host#/t/${full.made.tasting}/${page}`);

async function goTo(cue: string, verb: string, guestVerb: string): Promise<void> {
  expect(await full.host.host({ type: 'JumpTo', cue })).toMatchObject({ ok: true });
  await host.heading(verb, 2).waitFor();
  await guest.person.heading(guestVerb, 1).waitFor();
}

/** Where the system has its own colours, what is pressed or current is told by more than a colour. */
async function showsPressed(): Promise<void> {
  const ready = guest.person.button(guestWords.signals.ready);
  await ready.click();
  await guest.person.page
    .getByRole('button', { name: guestWords.signals.ready, pressed: true, disabled: false })
    .waitFor();
  for (const { page } of [guest.person, host]) await page.emulateMedia({ forcedColors: 'active' });
  const edge = (button: string) =>
    guest.person.button(button).evaluate((each) => getComputedStyle(each).borderTopStyle);
  expect(await edge(guestWords.signals.ready)).not.toBe(await edge(guestWords.signals.moreTime));
  await guest.person.page.setViewportSize({ width: 360, height: 640 });
  await guest.person.photograph('full-write-forced', true);
  await host.photograph('full-write-host-forced');
  for (const { page } of [guest.person, host]) await page.emulateMedia({ forcedColors: 'none' });
}

/** A drawer of the tablet, for as long as it is looked at. */
async function fitsDrawer(button: string, name: string): Promise<void> {
  await host.button(button).click();
  await host.page.getByRole('dialog').waitFor();
  await fits(host, name, tablets);
  await host.page.keyboard.press('Escape');
}

describe('a full house', () => {
  it('fits on the invitation and at the seat', async () => {
    await guest.person.field(guestWords.invitation.name).waitFor();
    await fits(guest.person, 'invitation', phones);
    await guest.sitsDown();
    await guest.readsCautions();
    await guest.person.button(guestWords.seat.open).waitFor();
    await fits(guest.person, 'seated', phones);
  });

  it('fits at the doors', async () => {
    await open('doors');
    await host.text(new RegExp(words.table.counts.here(40, 48))).waitFor();
    await fits(host, 'doors', tablets);
  });

  it('fits beside the glass in hand, with many who ask for something', async () => {
    await open('room');
    await goTo('lamp1/first/look', words.cue.steps.look, cueWords.step.look.spirit.verb);
    await fits(guest.person, 'look', phones);
    await goTo('lamp1/first/nose', words.cue.steps.nose, cueWords.step.nose.spirit.verb);
    const cue = 'lamp1/first/nose';
    const signals = ['ready', 'ready', 'more-time', 'needs-host'] as const;
    for (const [index, each] of full.guests.slice(0, 9).entries())
      await each.guest({ type: 'GiveSignal', signal: signals[index % 4], cue });
    await host.text(words.table.states['needs-host']).first().waitFor();
    await fits(host, 'nose', tablets);
    await fits(guest.person, 'nose', phones);
    await goTo('lamp16/writing/write/nose', words.cue.writes.nose, cueWords.write.nose.verb);
    await guest.field('nose').waitFor();
    await fits(guest.person, 'write', phones);
    await showsPressed();
    await fitsDrawer(words.table.everybody, 'whole-table');
    await fitsDrawer(words.tools.glasses, 'glasses');
  });

  it('fits at the talk and at the way home', async () => {
    for (const [index, each] of full.guests.slice(0, 6).entries()) {
      await each.save({ pour: 'lamp1', field: 'nose', value: `${'🍐 pear '.repeat(20)}${index}` });
      await each.share({ pour: 'lamp1', sharing: 'shared' });
    }
    await goTo('flight-1/discussion', words.cue.kinds.discussion, cueWords.discussion.verb);
    await full.host.host({ type: 'OpenDiscussion', pours: ['lamp1'] });
    await guest.person.text(boardWords.fields.nose).first().waitFor();
    await host.text(words.board.fields.nose).first().waitFor();
    await fits(guest.person, 'talk', phones);
    await fits(host, 'talk', tablets);
    await full.host.host({ type: 'Finish' });
    await guest.person.heading(keepsakeWords.title, 1).waitFor();
    await guest.person.heading(full.plan.pours[0]?.name ?? '').waitFor();
    await fits(guest.person, 'keepsake', phones);
  });

  it('and nothing went wrong on either screen', () => {
    expect([host, guest.person].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
