import { afterAll, beforeAll, expect, it } from 'vitest';
import { hostWords } from '../../shared/language/en/host.ts';
import { planWords as words } from '../../shared/language/en/plan.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let host: Person;

const shopList = [
  'Weingut;Wein;Jahrgang;Preis',
  'Hollow Hill;Hillside;2019;18,50 €',
  'Elder Bank;Old Vines;2018;22 CHF',
  'Oak Ford\tRiverside\t2020\t15,00',
  'Summe;;;55,50',
].join('\n');

beforeAll(async () => {
  premises = await Premises.open();
  host = await Person.arrives(premises.browser, 'host', 'tablet');
  await host.page.goto(`${premises.room.origin}/host#key=${premises.houseKey}`);
});
afterAll(() => premises?.close());

const evenings = () => host.page.locator('.tasting').count();
const partNamed = (part: keyof typeof words.parts) =>
  host.page.getByRole('button', { name: new RegExp(`^${words.parts[part]}`) });

it('makes no evening of a pasted list until something of it is kept', async () => {
  const { page } = host;
  await host.button(new RegExp(hostWords.home.paste)).click();
  await page.getByLabel(words.list.paste).fill(shopList);
  await host.button(words.list.read).click();
  await page.getByRole('radio', { name: words.drinksOf.wine, checked: true }).waitFor();
  const keep = host.button(words.list.keep(3));
  // The price in francs is asked about once, and nothing is kept before the answer.
  expect(await keep.isDisabled()).toBe(true);
  await page.getByText(words.list.money.ways.convert).click();
  await page.getByLabel(words.list.money.rate('CHF', 'EUR')).fill('1.1');
  await host.look('list-from-home');
  await host.button(words.notNow).click();
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  expect(await evenings()).toBe(0);

  await host.button(new RegExp(hostWords.home.paste)).click();
  await page.getByLabel(words.list.paste).fill(shopList);
  await host.button(words.list.read).click();
  await page.getByText(words.list.money.ways.leave).click();
  await keep.click();
  await page
    .getByRole('button', { name: /Riverside/ })
    .first()
    .waitFor();
  for (const name of ['Hillside', 'Old Vines'])
    expect(await page.getByRole('button', { name: new RegExp(name) }).count()).toBeGreaterThan(0);
  await host.look('plan-from-list');
});

it('goes back through the parts of the plan by the way back of the browser', async () => {
  const { page } = host;
  await partNamed('shopping').click();
  await host.heading(words.parts.shopping, 2).waitFor();
  await partNamed('table').click();
  await host.heading(words.parts.table, 2).waitFor();
  await page.goBack();
  await host.heading(words.parts.shopping, 2).waitFor();
  await page.reload();
  await host.heading(words.parts.shopping, 2).waitFor();
  await page.goBack();
  await host.heading(words.parts.pours, 2).waitFor();
});

it('makes all pours of another drink at once, and back', async () => {
  const { page } = host;
  await page.getByText(words.pours.drink, { exact: true }).click();
  await page.getByText(words.drinksOf.beer, { exact: true }).last().click();
  await page.getByText(words.pours.allAre(words.drinksOf.beer)).waitFor();
  await host.button(words.undo).click();
  await page.getByRole('radio', { name: words.drinksOf.wine, checked: true }).waitFor();
});

it('takes every footer of a dialog of the plan onto the screen', async () => {
  const { page } = host;
  const footIsSeen = async (name: string): Promise<void> => {
    const foot = page.locator('dialog > .thumb-bar');
    await foot.waitFor();
    const box = await foot.boundingBox();
    const height = page.viewportSize()?.height ?? 0;
    expect({ name, below: (box?.y ?? 0) + (box?.height ?? 0) > height }).toEqual({ name, below: false });
    const dialog = await page.locator('dialog').boundingBox();
    // Inside its dialog too, which may scroll.
    const edge = (dialog?.y ?? 0) + (dialog?.height ?? 0);
    expect({ name, cut: (box?.y ?? 0) + (box?.height ?? 0) > edge + 1 }).toEqual({ name, cut: false });
  };
  await page
    .getByRole('button', { name: /Riverside/ })
    .first()
    .click();
  await footIsSeen('pour');
  await host.look('plan-pour-sheet');
  await page.keyboard.press('Escape');
  await host.button(words.pours.list).click();
  await page.getByLabel(words.list.paste).fill(shopList);
  await host.button(words.list.read).click();
  await footIsSeen('list');
  await host.look('plan-list-sheet');
  await page.keyboard.press('Escape');
});

it('deletes a planned evening, says so on the list, and leaves no notice on the next page', async () => {
  const { page } = host;
  await partNamed('copies').click();
  await host.button(recapWords.remove.begin).click();
  await page.getByText(recapWords.remove.understood).click();
  // The page asks again for what is gone, and the browser writes that down.
  host.lineMayFail = true;
  await host.button(recapWords.remove.go).click();
  await host.heading(hostWords.home.title, 1).waitFor();
  await page.locator('.status-text').getByText(words.copies.remove.gone).waitFor();
  expect(await evenings()).toBe(0);
  await host.button(new RegExp(hostWords.home.demo)).click();
  await host.button(hostWords.doors.open).waitFor();
  expect(await page.locator('.status-shown').count()).toBe(0);
  expect(host.faults).toEqual([]);
});
