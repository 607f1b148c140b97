import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoEvening } from '../../shared/demo/evening.ts';
import { hostWords as words } from '../../shared/language/en/host.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { createTasting } from '../support/tasting.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let made: CreatedTasting;
const here: Person[] = [];

beforeAll(async () => {
  premises = await Premises.open();
  made = await createTasting(premises, { ...demoEvening, guests: 8 });
});
afterAll(() => premises?.close());

async function host(
  page: 'doors' | 'room' | 'plan',
  size: 'tablet' | 'phone',
  theme: 'light' | 'dark' = 'light',
): Promise<Person> {
  const person = await Person.arrives(premises.browser, `host at the ${page}`, size, theme);
  here.push(person);
  await person.page.goto(`${premises.room.origin}/host#tasting=${made.tasting}&key=${made.hostKey}`);
  await person.page.getByRole('heading', { level: 1 }).waitFor();
  await person.page.goto(`${premises.room.origin}/host#/t/${made.tasting}/${page}`);
  return person;
}

const range = /ends \d\d:\d\d to \d\d:\d\d, likely \d\d:\d\d/;

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
    await tablet.text(/is fitted to end by/).waitFor();
    await expect.poll(() => head(tablet).textContent()).not.toBe(before);
    // The other host's device has it too.
    await expect.poll(() => head(phone).textContent()).toBe(await head(tablet).textContent());
    await tablet.button(words.undo).click();
    await expect.poll(() => head(tablet).textContent()).toBe(before);
  });

  it('says by how much an end is out of reach, offers what to leave out, and puts it back', async () => {
    await head(phone).click();
    await field(phone).fill(await moved(phone, -2));
    await phone.text(/Even at its shortest it is \d+ minutes too long\./).waitFor();
    await phone.look('pace-too-long-cellar');
    const over = async () =>
      Number(/(\d+) minutes too long/.exec((await drawer(phone).textContent()) ?? '')?.[1]);
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
    await tablet.button(/is within reach/).waitFor();
    await head(tablet).click();
    await field(tablet).fill(await moved(tablet, -2));
    await tablet.button(words.pace.shortenAll).click();
    await tablet.button(/likely \d+ min past/).waitFor();
    // What is said lies over the head of the page until it is put away.
    await tablet.button(words.close).click();
    await tablet.look('pace-late');
    await head(tablet).click();
    await tablet.button(words.pace.undo).click();
  });

  it('has kept every screen in order', () => {
    expect(here.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
