import { afterAll, beforeAll, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { choosingWords } from '../../shared/language/en/choosing.ts';
import { guestWords as words } from '../../shared/language/en/guest.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';
import { seatWords } from '../../shared/language/en/seat.ts';
import { wineText } from '../../shared/words/en/wine.ts';
import type { Device } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { Guest } from './guest.ts';
import { Keyboard } from './keyboard.ts';
import { Premises } from './premises.ts';

/** What stands where on a guest's phone: a small one, a very low one, and one whose line is down. */
const plan = planSchema.parse({
  ...demoEvening,
  blind: true,
  drink: 'wine',
  pacing: { by: 'host' },
  pours: demoEvening.pours?.map(({ id, name }) => ({ id, name, drink: 'wine' })),
});
const cues = compile(plan);
const first = plan.pours[0]?.id ?? '';
const cueCalled = (id: string): Cue => {
  const cue = cues.find((each) => each.id === id);
  if (cue === undefined) throw new Error(`The evening has no cue ${id}.`);
  return cue;
};

let premises: Premises;
let host: Device;
let guest: Guest;
let guestAddress = '';
/** What comes a moment later over a slow line, held back until a test has seen the page without it. */
let sendRest = (): void => undefined;
const rest = new Promise<void>((resolve) => {
  sendRest = resolve;
});
const glass = words.glass.of(1, plan.pours.length);

const leadTo = async (id: string): Promise<void> => {
  await host.host({ type: 'JumpTo', cue: cueCalled(id).id });
  await guest.isAt(cueCalled(id));
};
const seen = async (text: string): Promise<boolean> => {
  const { page } = guest.person;
  const height = page.viewportSize()?.height ?? 0;
  const boxes = await page.getByText(text).evaluateAll((all) =>
    all.map((each) => ({
      box: each.getBoundingClientRect().toJSON() as DOMRect,
      drawn: each.checkVisibility(),
    })),
  );
  return boxes.some(({ box, drawn }) => drawn && box.height > 10 && box.top >= 0 && box.bottom <= height);
};

beforeAll(async () => {
  premises = await Premises.open();
  const house = new House({ url: premises.room.origin, stop: async () => undefined });
  const made = await house.plan(plan, premises.houseKey);
  host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  guest = await Guest.arrives(premises.browser, 'Berit');
  await guest.person.page.route(/\/assets\/seat-part/, (route) => rest.then(() => route.continue()));
  guestAddress = `${premises.wifi.origin}/j/${made.code}`;
  await guest.person.page.goto(guestAddress);
  await guest.sitsDown();
  await guest.readsCautions();
});
afterAll(async () => {
  host?.close();
  await premises?.close();
});

it('keeps what has the focus in sight when something comes in above it (2.4.11 of WCAG 2.2)', async () => {
  const { page } = guest.person;
  const keys = new Keyboard(guest.person);
  await page.setViewportSize({ width: 360, height: 500 });
  await keys.walkTo(page.getByRole('navigation', { name: choosingWords.choose }).getByRole('link'));
  sendRest();
  await guest.person.button(seatWords.tryTone).waitFor();
  await keys.staysInSight();
  expect(guest.person.faults).toEqual([]);
  await page.setViewportSize({ width: 360, height: 640 });
});

/** Where the room and its head begin on a screen. */
const placesOf = ({ person }: Guest): Promise<readonly (number | undefined)[]> =>
  person.page.evaluate(() =>
    ['.room', '.room-head'].map((each) => document.querySelector(each)?.getBoundingClientRect().top),
  );

it('turns with the room and moves nothing that stays, also while the four words are unread', async () => {
  const unread = guest.person.button(seatWords.fourWords.seen);
  await leadTo('ground-rules');
  await unread.waitFor();
  await guest.person.look('guest-four-words-at-rules');
  const before = await placesOf(guest);
  await leadTo('practice/swirl');
  expect(await unread.count()).toBe(0);
  expect(await placesOf(guest)).toEqual(before);
  await leadTo('gathering');
  await unread.waitFor();
  expect(await placesOf(guest)).toEqual(before);
});

it('keeps the place of the call while eyes are closed, and shows captions when nothing pushes them any more', async () => {
  const lark = await Guest.arrives(premises.browser, 'Lark');
  const { page } = lark.person;
  let sendParts = (): void => undefined;
  const parts = new Promise<void>((resolve) => {
    sendParts = resolve;
  });
  await page.route(/\/assets\/notebook-part/, (route) => parts.then(() => route.continue()));
  await page.addInitScript(() => {
    new MutationObserver((_, observer) => {
      if (document.querySelector('.captions') === null) return;
      Object.assign(window, { captionsCame: performance.now() });
      observer.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto(guestAddress);
  await lark.sitsDown({ atHome: true });
  await lark.readsCautions();
  const fetched = (name: string): Promise<number | undefined> =>
    page.evaluate(
      (part) => performance.getEntriesByType('resource').find((each) => each.name.includes(part))?.startTime,
      name,
    );
  await expect.poll(() => fetched('host-says')).toBeGreaterThan(0);
  await page.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
  const released = await page.evaluate(() => performance.now());
  sendParts();
  await page.locator('.captions').waitFor();
  expect(
    await page.evaluate(() => (window as unknown as { captionsCame: number }).captionsCame),
  ).toBeGreaterThan(released);
  const places = [];
  for (const cue of ['practice/swirl', 'practice/nose', 'practice/sip']) {
    await host.host({ type: 'JumpTo', cue: cueCalled(cue).id });
    await lark.isAt(cueCalled(cue));
    places.push(await placesOf(lark));
  }
  expect(places[0]?.[0]).toBeGreaterThan(40);
  expect(places).toEqual([places[0], places[0], places[0]]);
  expect(lark.person.faults).toEqual([]);
  await page.context().close();
});

it('says which glass it is with in every step, the card and the closed eyes too', async () => {
  for (const step of ['first/look', 'first/nose']) {
    await leadTo(`${first}/${step}`);
    expect({ step, seen: await seen(glass) }).toEqual({ step, seen: true });
    await guest.person.look(`guest-glass-${step.replace('first/', '')}`);
  }
});

it('says so on a very low screen as well, where there is no room for the picture', async () => {
  const { page } = guest.person;
  await page.setViewportSize({ width: 390, height: 400 });
  const steps = cues.map(({ id }) => id).filter((id) => new RegExp(`^${first}/(first|writing)/`).test(id));
  expect(steps.length).toBeGreaterThan(8);
  for (const step of steps) {
    await leadTo(step);
    await page.evaluate(() => window.scrollTo(0, 0));
    expect({ step, seen: await seen(glass) }).toEqual({ step, seen: true });
  }
  await guest.person.photograph('guest-glass-low');
  await page.setViewportSize({ width: 360, height: 640 });
});

it('asks for the taste first and the words after it, on two short pages, and for no bubbles in still wine', async () => {
  const { page } = guest.person;
  await leadTo(`${first}/writing/write/palate`);
  await page.getByRole('group', { name: wineText.marks.sweet.name }).waitFor();
  expect(await page.getByRole('group', { name: wineText.marks.fizz.name }).count()).toBe(0);
  expect(await page.locator('.chip-place').count()).toBe(0);
  await guest.person.look('guest-palate-scales', { whole: true });
  await guest.person.button(notebookWords.palatePages.places).click();
  await page.locator('.chip-place').first().waitFor();
  expect(await page.locator('.mark').count()).toBe(0);
  await guest.person.look('guest-palate-places', { whole: true });
});

it('keeps the way to the own notes on the screen while the line is down', async () => {
  const { page } = guest.person;
  for (const step of ['writing/write/nose', 'first/look']) {
    await leadTo(`${first}/${step}`);
    guest.person.lineMayFail = true;
    premises.wifi.cut();
    await page.locator('.link-line').waitFor();
    await page.evaluate(() => window.scrollTo(0, 0));
    for (const height of [640, 568, 480]) {
      await page.setViewportSize({ width: 360, height });
      expect({ step, height, seen: await seen(words.notes.open) }).toEqual({ step, height, seen: true });
    }
    await guest.person.photograph(`guest-line-down-${step.replaceAll('/', '-')}`);
    await page.setViewportSize({ width: 360, height: 640 });
    premises.wifi.mend();
    await page.locator('.link-line').waitFor({ state: 'hidden' });
  }
  expect(guest.person.faults).toEqual([]);
});
