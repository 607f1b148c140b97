import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { hostWords as words } from '../../shared/language/en/host.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { type Guest, House } from '../server/support/house.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

/** What stands where on the screens of a host who conducts: a tablet face up on the table, and a phone. */
const plan = planSchema.parse({ ...demoEvening, pacing: { by: 'host' }, discussion: 'each-pour' });
const cues = compile(plan);
const first = plan.pours[0]?.id ?? '';
const talk = cues.find(({ kind }) => kind === 'discussion')?.id ?? '';

let premises: Premises;
let house: House;
let made: CreatedTasting;
let hand: Device;
let ada: Guest;
let tablet: Person;
let phone: Person;

const goTo = async (cue: string): Promise<void> => {
  expect(await hand.host({ type: 'JumpTo', cue })).toMatchObject({ ok: true });
};
const conducts = async (size: 'tablet' | 'phone'): Promise<Person> => {
  const person = await Person.arrives(premises.browser, `host-${size}`, size);
  if (size === 'phone') await person.page.setViewportSize({ width: 390, height: 844 });
  await person.page.goto(`${premises.room.origin}/host#tasting=${made.tasting}&key=${made.hostKey}`);
  await person.page.getByRole('link', { name: words.doors.toRoom }).click();
  await person.page.locator('.room-now .now-verb').waitFor();
  return person;
};
const boxOf = async (part: Locator) => {
  const box = await part.boundingBox();
  if (box === null) throw new Error(`${part} is not drawn.`);
  return { top: box.y, bottom: box.y + box.height };
};

beforeAll(async () => {
  premises = await Premises.open();
  house = new House({ url: premises.room.origin, stop: async () => undefined });
  made = await house.plan(plan, premises.houseKey);
  hand = await house.host(made);
  await hand.host({ type: 'OpenDoors' });
  ada = await house.guest(made, 'Ada');
  for (const name of ['Bram', 'Chiara']) await house.guest(made, name);
  tablet = await conducts('tablet');
  phone = await conducts('phone');
});
afterAll(async () => {
  await house?.close();
  await premises?.close();
});
beforeEach(async () => {
  await goTo(`${first}/first/look`);
  for (const { page } of [tablet, phone])
    await page.locator('.now-verb').getByText(words.cue.steps.look, { exact: true }).waitFor();
});

it('lets a notice lie over neither title nor time nor end, and takes it along to no other page', async () => {
  const { page } = tablet;
  await page.locator('.order-row[aria-expanded]').first().click();
  await page.locator('.order-row', { hasText: words.cue.kinds.welcome }).click();
  await tablet.button(words.room.jump.go).click();
  const notice = page.locator('.status-shown');
  await notice.waitFor();
  await tablet.look('host-notice');
  const { bottom } = await boxOf(notice);
  for (const part of ['.room-title', '.room-times', '.room-end', '.now-verb'])
    expect({ part, covered: (await boxOf(page.locator(part))).top < bottom - 0.5 }).toEqual({
      part,
      covered: false,
    });
  // Nothing is pushed off the screen for it.
  expect((await boxOf(page.locator('.room-thumb'))).bottom).toBeLessThanOrEqual(768.5);
  await page.goto(`${premises.room.origin}/host#/t/${made.tasting}/doors`);
  await page.getByRole('link', { name: words.doors.toRoom }).waitFor();
  expect(await notice.count()).toBe(0);
  await page.getByRole('link', { name: words.doors.toRoom }).click();
  await page.locator('.room-now .now-verb').waitFor();
});

it('writes names, states and the end large enough for a metre of distance', async () => {
  await ada.guest({ type: 'GiveSignal', signal: 'needs-host', cue: `${first}/first/look` });
  await tablet.page.locator('.room-table .seat-needs-host').waitFor();
  for (const part of ['.seat-name', '.seat-state', '.end-words', '.room-times', '.table-counts']) {
    const sizes = await tablet.page
      .locator(`:is(.room-head, .room-table) ${part}`)
      .evaluateAll((all) => all.map((each) => Number.parseFloat(getComputedStyle(each).fontSize)));
    expect({ part, least: Math.min(...sizes) >= 20 }).toEqual({ part, least: true });
  }
  await tablet.look('host-from-afar');
});

it('shows on a phone who needs help above the bar, and stands still when the room goes on', async () => {
  const { page } = phone;
  await ada.guest({ type: 'GiveSignal', signal: 'needs-host', cue: `${first}/first/look` });
  const asking = page.locator('.room-asking .asks');
  await asking.waitFor();
  await page.evaluate(() => window.scrollTo(0, 0));
  await phone.photograph('host-phone-asked');
  expect((await boxOf(asking)).bottom).toBeLessThan((await boxOf(page.locator('.room-thumb'))).top);
  await hand.host({ type: 'AnswerSeat', seat: ada.seat });
  await asking.waitFor({ state: 'hidden' });
  const next = phone.button(new RegExp(`^${words.room.next}`));
  for (let taps = 0; taps < 6; taps += 1) {
    await (await next.elementHandle())?.waitForElementState('enabled');
    await next.click();
    await page.waitForTimeout(400);
    expect(await page.evaluate(() => window.scrollY)).toBe(0);
    expect((await boxOf(page.locator('.room-end'))).top).toBeGreaterThanOrEqual(0);
  }
});

it('begins a talk with what was shared', async () => {
  const { page } = tablet;
  expect(await ada.save({ pour: first, field: 'nose', value: 'pear and wet slate' })).toMatchObject({
    ok: true,
  });
  await goTo(talk);
  expect(await hand.host({ type: 'OpenDiscussion', pours: [first] })).toMatchObject({ ok: true });
  const consents = { page: { sharing: 'named', parts: ['nose'] } } as const;
  expect(await ada.consent(consents, [first])).toMatchObject({ ok: true });
  const board = page.locator('.board-glass').first();
  await board.waitFor();
  await tablet.look('host-board-first');
  const height = (await boxOf(page.locator('.room-tools'))).top;
  expect((await boxOf(board)).top).toBeLessThan(height - 150);
  expect((await boxOf(board)).top).toBeLessThan((await boxOf(page.locator('.speakers').first())).top);
  expect([...tablet.faults, ...phone.faults]).toEqual([]);
});
