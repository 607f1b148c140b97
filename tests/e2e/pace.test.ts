import { nanoid } from 'nanoid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoEvening } from '../../shared/demo/evening.ts';
import type { GuestFollower } from '../../shared/follower/guest-follower.ts';
import { hostWords as words } from '../../shared/language/en/host.ts';
import { planWords } from '../../shared/language/en/plan.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { takeSeat } from '../rehearsal/ask-server.ts';
import { keepInMemory, openPage } from '../rehearsal/device.ts';
import { createTasting } from '../support/tasting.ts';
import { until } from '../support/until.ts';
import { aNumber, anything, aTime, like, written } from './like.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let made: CreatedTasting;
let planned: CreatedTasting;
const here: Person[] = [];
const guests: GuestFollower[] = [];

beforeAll(async () => {
  premises = await Premises.open();
  made = await createTasting(premises, { ...demoEvening, guests: 8 });
});
afterAll(async () => {
  for (const guest of guests) guest.close();
  await premises?.close();
});

async function host(
  page: 'doors' | 'room' | 'plan',
  size: 'tablet' | 'phone',
  theme: 'light' | 'dark' = 'light',
  of = made,
): Promise<Person> {
  const person = await Person.arrives(premises.browser, `host at the ${page}`, size, theme);
  here.push(person);
  await person.page.goto(`${premises.room.origin}/host#tasting=${of.tasting}&key=${of.hostKey}`);
  await person.page.getByRole('heading', { level: 1 }).waitFor();
  await person.page.goto(`${premises.room.origin}/host#/t/${of.tasting}/${page}`);
  return person;
}

const range = like(words.pace.range(aTime, aTime, aTime));

const tooLong = like(words.pace.tooLong(aNumber));

/** The time in the field moved by so many hours, as HH:MM. */
async function moved(person: Person, hours: number): Promise<string> {
  const [hour = 0, minute = 0] = (await field(person).inputValue()).split(':').map(Number);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two((hour + hours + 24) % 24)}:${two(minute)}`;
}
const field = ({ page }: Person) => page.getByLabel(words.pace.field, { exact: true });
const head = (person: Person) => person.button(range);
const drawer = ({ page }: Person) => page.getByRole('dialog');

describe('the time ahead', () => {
  let tablet: Person;
  let phone: Person;

  it('is a range on every host’s device as soon as the doors are open', async () => {
    tablet = await host('doors', 'tablet');
    await tablet.button(words.doors.open).click();
    await tablet.page.getByRole('link', { name: words.doors.toRoom }).click();
    await head(tablet).waitFor();
    await tablet.look('pace-range');
    phone = await host('room', 'phone', 'dark');
    await head(phone).waitFor();
    await phone.look('pace-range-cellar', { whole: true });
  });

  it('shows what a wished end would shorten, does it with one tap, and undoes it', async () => {
    const before = await head(tablet).textContent();
    await head(tablet).click();
    await field(tablet).waitFor();
    for (let taps = 0; taps < 3; taps += 1) await tablet.button(words.pace.sooner).click();
    await tablet.heading(words.pace.would, 3).waitFor();
    await tablet.text(words.pace.floors).waitFor();
    await tablet.look('pace-finish-by');
    await tablet.button(words.pace.shorten).click();
    await tablet.text(like(words.pace.shortened(aTime))).waitFor();
    await expect.poll(() => head(tablet).textContent()).not.toBe(before);
    // The other host's device has it too.
    await expect.poll(() => head(phone).textContent()).toBe(await head(tablet).textContent());
    await tablet.button(words.undo).click();
    await expect.poll(() => head(tablet).textContent()).toBe(before);
  });

  it('says by how much an end is out of reach, offers what to leave out, and puts it back', async () => {
    await head(phone).click();
    await field(phone).fill(await moved(phone, -2));
    await phone.text(tooLong).waitFor();
    await phone.look('pace-too-long-cellar');
    const over = async () => Number(tooLong.exec((await drawer(phone).textContent()) ?? '')?.[1]);
    const most = await over();
    await phone.button(new RegExp(`^${words.pace.offer.talks}`)).click();
    await phone.button(words.pace.putBackLabel(words.pace.talksShort)).waitFor();
    await expect.poll(over).toBeLessThan(most);
    await phone.button(new RegExp(`^${words.pace.offer.closing}`)).click();
    await phone.button(words.pace.putBackLabel(words.pace.closingOut)).waitFor();
    await phone.look('pace-left-out-cellar');
    await phone.button(words.pace.putBackLabel(words.pace.talksShort)).click();
    await phone.button(words.pace.putBackLabel(words.pace.closingOut)).click();
    await expect.poll(over).toBe(most);
    await phone.page.keyboard.press('Escape');
  });

  it('keeps a wished end in sight, and says calmly when it gets out of reach', async () => {
    await head(tablet).click();
    await field(tablet).fill(await moved(tablet, 1));
    await tablet.button(words.pace.keep).click();
    await tablet.button(like(words.pace.inTime(aTime))).waitFor();
    await head(tablet).click();
    await field(tablet).fill(await moved(tablet, -2));
    await tablet.button(words.pace.shortenAll).click();
    await tablet.button(like(words.pace.late(aNumber, aTime))).waitFor();
    // What is said lies over the head of the page until it is put away.
    await tablet.button(words.close).click();
    await tablet.look('pace-late');
    await head(tablet).click();
    await tablet.button(words.pace.undo).click();
  });

  it('shows at a glance how ready the room is, and asks the last ones', async () => {
    const origin = premises.room.origin;
    for (const name of ['Ada', 'Berit', 'Cleo', 'Dov', 'Elin']) {
      const key = nanoid(32);
      await takeSeat(origin, { code: made.code, key, name, leftHanded: false, remote: false });
      const { follower } = openPage({
        origin,
        tasting: made.tasting,
        key,
        keep: keepInMemory(),
        tap: () => undefined,
      });
      guests.push(follower);
    }
    await tablet.page.getByRole('button', { name: /1 · / }).click();
    await tablet.page.getByRole('button', { name: words.cue.steps.nose }).first().click();
    await tablet.button(words.room.jump.go).click();
    await tablet.heading(words.cue.steps.nose, 2).waitFor();
    const cue = await until('the guests have followed', () => {
      const stages = guests.map(({ stage }) => stage.peek());
      const [first] = stages;
      const all = stages.every((stage) => stage?.status === 'under-way' && stage.cue.step === 'nose');
      return all && first?.status === 'under-way' ? first.cue.id : undefined;
    });
    const signals = ['ready', 'ready', 'ready', 'more-time', 'needs-host'] as const;
    for (const [index, signal] of signals.entries())
      await guests[index]?.send({ type: 'GiveSignal', signal, cue });
    await tablet.text(words.readiness.of(3, 5)).waitFor();
    await tablet.text(words.readiness.moreTime(1)).waitFor();
    await tablet.text(words.readiness.needHost(1)).waitFor();
    await tablet.button(words.tools.more).click();
    await tablet.page.getByRole('radio', { name: new RegExp(`^${words.more.pacings.room}`) }).click();
    await tablet.text(`${words.more.shares['0.75']} · ${words.readiness.shareNow(4, 5)}`).waitFor();
    await tablet.look('pace-share');
    await tablet.page.keyboard.press('Escape');
    await tablet.text(words.readiness.goesOn(4, 5)).waitFor();
    await tablet.button(words.close).click();
    await tablet.look('pace-readiness');
    await phone.look('pace-readiness-cellar', { whole: true });
    await tablet.button(words.readiness.nudge).click();
    await tablet.text(new RegExp(words.room.reminder('nudge'))).waitFor();
    await tablet.button(words.readiness.nudge).waitFor({ state: 'hidden' });
  });

  it('is rehearsed from the plan, with what would help, and the advice is taken and undone', async () => {
    planned = await createTasting(premises, {
      ...demoEvening,
      level: 'devotees',
      guests: 8,
      startsAt: '2031-10-25T23:30:00+02:00',
      timeZone: 'Europe/Vienna',
    });
    for (const [size, theme] of [
      ['tablet', 'light'],
      ['phone', 'dark'],
    ] as const) {
      const person = await host('plan', size, theme, planned);
      const { rehearsal, parts } = planWords;
      await person.button(new RegExp(`^${parts.course}`)).click();
      await person.page.getByLabel(rehearsal.wished, { exact: true }).fill('01:45');
      await person.button(rehearsal.go).click();
      await person.button(rehearsal.again).waitFor();
      const report = person.page.getByRole('region', { name: rehearsal.title });
      await report.getByText(like(rehearsal.inTime(anything, written('01:45')))).waitFor();
      expect(await report.getByRole('row').count()).toBeGreaterThanOrEqual(4);
      await report.scrollIntoViewIfNeeded();
      await person.look(`pace-rehearsal-${theme}`, { whole: true });
      if (size === 'phone') continue;
      await person.button(rehearsal.changeLabel(rehearsal.changes['closing-pass'])).click();
      await person.text(rehearsal.stale).waitFor();
      await person.button(words.undo).click();
    }
  });

  it('has kept every screen in order', () => {
    expect(here.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
