import { readFile } from 'node:fs/promises';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoEvening } from '../../shared/demo/evening.ts';
import { beforeEveningWords } from '../../shared/language/en/before-evening.ts';
import { inviteWords } from '../../shared/language/en/invite.ts';
import { planWords } from '../../shared/language/en/plan.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { createTasting } from '../support/tasting.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let made: CreatedTasting;
const here: Person[] = [];

beforeAll(async () => {
  premises = await Premises.open();
  made = await createTasting(premises, {
    ...demoEvening,
    guests: 4,
    startsAt: '2031-10-26T02:30:00+01:00',
    timeZone: 'Europe/Vienna',
  });
});
afterAll(() => premises?.close());

const before = beforeEveningWords.steps;

async function device(size: 'tablet' | 'phone', name: string, way: string): Promise<Person> {
  const person = await Person.arrives(premises.browser, name, size);
  here.push(person);
  await person.page.goto(`${premises.room.origin}/host#tasting=${made.tasting}&key=${made.hostKey}`);
  await person.page.getByRole('link', { name: planWords.parts.before, exact: true }).click();
  const step = person.page.getByRole('link', { name: way, exact: true });
  await step.waitFor();
  await person.look(`host-before-the-evening-${size}`);
  await step.click();
  return person;
}

const glass = ({ page }: Person, place: number, code: string, state: string) =>
  page.getByRole('button', { name: new RegExp(`^${words.glass(words.place(place), code)} ${state} `) });

it('ticks of what is done belong to the evening: another device shows them', async () => {
  const tick = async (person: Person) => {
    await person.page.goto(`${premises.room.origin}/host#tasting=${made.tasting}&key=${made.hostKey}`);
    await person.page.goto(`${premises.room.origin}/host#/t/${made.tasting}/plan/before`);
    return person.page.getByRole('switch', { name: before.paper.name, exact: true });
  };
  const [one, other] = await Promise.all([
    Person.arrives(premises.browser, 'ticking', 'tablet'),
    Person.arrives(premises.browser, 'looking', 'phone'),
  ]);
  here.push(one, other);
  await (await tick(one)).check();
  await one.page.getByText(planWords.keeping.kept).waitFor();
  const seen = await tick(other);
  await expect.poll(() => seen.isChecked()).toBe(true);
  await other.page.getByText(beforeEveningWords.summary(1, 6)).waitFor();
});

describe('the pour run on two devices', () => {
  let tablet: Person;
  let phone: Person;
  beforeAll(async () => {
    tablet = await device('tablet', 'host', before.pouring.go);
    phone = await device('phone', 'helper', before.pouring.go);
  });

  it('shows on the phone what is ticked on the tablet, a whole column with one tap', async () => {
    await tablet.button(words.column('418', words.doStep.covered)).click();
    for (const place of [1, 2, 3, 4]) await glass(phone, place, '418', words.steps.covered).waitFor();
    await glass(phone, 1, '736', words.empty).waitFor();
  });

  it('loses nothing when both tick at once', async () => {
    const tapAll = async (person: Person, places: readonly number[]) => {
      for (const place of places) await glass(person, place, '736', words.empty).click();
    };
    await Promise.all([tapAll(tablet, [1, 2]), tapAll(phone, [4, 3])]);
    for (const person of [tablet, phone]) {
      for (const place of [1, 2, 3, 4]) await glass(person, place, '736', words.steps.covered).waitFor();
    }
  });

  it('takes back the last tap of this device only', async () => {
    await glass(phone, 2, '152', words.empty).click();
    await glass(tablet, 2, '152', words.steps.covered).waitFor();
    await tablet.button(words.row(words.place(1), words.doStep.covered)).click();
    await glass(phone, 1, '603', words.steps.covered).waitFor();
    await tablet.button(words.undo).click();
    await glass(phone, 1, '603', words.empty).waitFor();
    await glass(phone, 1, '418', words.steps.covered).waitFor();
    await glass(phone, 2, '152', words.steps.covered).waitFor();
  });

  it('fills the vials of each kit for home, once and without drops, apart from the glasses', async () => {
    const vial = (person: Person, kit: number, state: string) =>
      person.page.getByRole('button', {
        name: new RegExp(`^${words.glass(words.vials.kit(kit), '418')} ${state} `),
      });
    await tablet.page.getByRole('radio', { name: words.vials.kinds.vials }).check();
    await vial(tablet, 1, words.empty).click();
    await vial(tablet, 1, words.ready).waitFor();
    await vial(tablet, 2, words.empty).waitFor();
    expect(await vial(tablet, 1, words.ready).getAttribute('aria-disabled')).toBe('true');
    const all = 2 * (demoEvening.pours?.length ?? 0);
    await tablet.text(words.vials.count(1, all)).waitFor();
    await tablet.look('host-pouring-vials');
    await tablet.page.getByRole('radio', { name: words.vials.kinds.glasses }).check();
  });

  it('goes through all steps of a spirit, and no further', async () => {
    for (const state of [words.empty, words.steps.covered]) {
      await glass(tablet, 3, '894', state).click();
    }
    await glass(phone, 3, '894', words.ready).waitFor();
    expect(await glass(phone, 3, '894', words.ready).getAttribute('aria-disabled')).toBe('true');
    for (const each of [tablet, phone]) await glass(each, 1, '418', words.steps.covered).focus();
    await tablet.look('host-pouring');
    await phone.look('helper-pouring');
  });
});

describe('word to the guests', () => {
  it('is a text to copy and a file that a calendar reads', async () => {
    const host = await device('tablet', 'writer', before.invitation.go);
    const { page } = host;
    const text = await page.getByLabel(inviteWords.text, { exact: true }).inputValue();
    expect(text).toContain(made.code);
    // The server of these tests is open on loopback alone: said before anything is sent.
    expect(await page.getByRole('note').first().innerText()).toBe(inviteWords.reach.machine);
    await page.getByRole('radio', { name: inviteWords.kinds.home }).check();
    const forHome = page.getByLabel(inviteWords.text, { exact: true });
    await expect.poll(() => forHome.inputValue()).toContain(`/kit/${made.code}`);
    await host.look('host-invite-home');
    await page.getByRole('radio', { name: inviteWords.kinds.table }).check();
    await expect.poll(() => forHome.inputValue()).toBe(text);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: inviteWords.download }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^[\wÀ-ž]+ [\wÀ-ž]+.*\.ics$/);
    const calendar = new ICAL.Component(ICAL.parse(await readFile(await download.path(), 'utf8')));
    const event = calendar.getFirstSubcomponent('vevent');
    await host.look('host-invite');
    // The second half past two of that night, after the clocks have gone back.
    expect(String(event?.getFirstPropertyValue('dtstart'))).toBe('2031-10-26T01:30:00Z');
  });

  it('and nothing went wrong on any of the pages', () => {
    expect(here.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
