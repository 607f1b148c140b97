import { afterAll, beforeAll, expect, it } from 'vitest';
import { hostWords as words } from '../../shared/language/en/host.ts';
import { planOf } from '../support/plans.ts';
import { createTasting } from '../support/tasting.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let host: Person;
const evenings = 50;

beforeAll(async () => {
  premises = await Premises.open();
  for (let number = 1; number <= evenings; number += 1) {
    const title = number === 4 ? 'Käse und Moscato' : `Evening ${number}`;
    await createTasting(
      premises,
      planOf(6, { title, place: 'The back room', startsAt: '2031-05-14T19:00:00Z' }),
    );
  }
  host = await Person.arrives(premises.browser, 'host', 'tablet');
  await host.page.goto(`${premises.room.origin}/host#key=${premises.houseKey}`);
});
afterAll(() => premises?.close());

const shown = () => host.page.locator('.tasting').count();
const nodes = () => host.page.evaluate(() => document.querySelectorAll('*').length);

it('shows the first evenings of many at once, more when asked, and each of them once', async () => {
  await host.page.getByRole('heading', { name: `Evening ${evenings}`, exact: true }).waitFor();
  expect(await shown()).toBe(20);
  expect(await nodes()).toBeLessThan(600);
  await host.look('many-evenings');
  await host.button(words.home.more).click();
  await expect.poll(shown).toBe(40);
  await host.button(words.home.more).click();
  await expect.poll(shown).toBe(evenings);
  expect(await host.button(words.home.more).count()).toBe(0);
});

it('finds one as it is typed, says when none fits, and shows all again when nothing is sought', async () => {
  const field = host.page.getByRole('searchbox', { name: words.home.find });
  await field.fill('kase 14.5.');
  await expect.poll(shown).toBe(1);
  await host.page.getByRole('heading', { name: 'Käse und Moscato' }).waitFor();
  await host.look('found-evening');
  await field.fill('nowhere to be found');
  await host.page.getByText(words.home.notFound).waitFor();
  expect(await shown()).toBe(0);
  await field.fill('');
  await expect.poll(shown).toBe(20);
  expect(host.faults).toEqual([]);
});
