import { afterAll, beforeAll, expect, it } from 'vitest';
import { hostWords as words } from '../../shared/language/en/host.ts';
import { houseWords } from '../../shared/language/en/houses.ts';
import { momentNow } from '../support/moment.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let host: Person;
beforeAll(async () => {
  process.env.QUIETPOUR_OPEN_HOUSE = '1';
  premises = await Premises.open();
  delete process.env.QUIETPOUR_OPEN_HOUSE;
  host = await Person.arrives(premises.browser, 'host', 'tablet');
});
afterAll(() => premises?.close());

it('lets whoever comes without a link make a house, says how to keep it, and its link opens it elsewhere', async () => {
  await host.page.goto(`${premises.room.origin}/host`);
  await host.heading(houseWords.none, 2).waitFor();
  await host.look('own-house-offer');
  await host.button(houseWords.make).click();
  await host.heading(words.home.title, 1).waitFor();
  await host.look('own-house');
  await host.text(houseWords.show).click();
  const field = host.page.getByRole('textbox', { name: houseWords.link });
  await field.waitFor();
  await host.look('own-house-link', { whole: true });
  const link = await field.inputValue();
  const [language = 'en'] = (momentNow()?.locale ?? 'en').split('-');
  expect(link).toMatch(new RegExp(`/host\\?language=${language}#key=[\\w-]{32,}$`));
  await host.button(new RegExp(words.home.demo)).click();
  await host.button(words.doors.open).waitFor();
  // With an evening in it, the link is folded away: guests may look on.
  await host.page.goto(`${premises.room.origin}/host`);
  await host.heading(houseWords.keep, 2).waitFor();
  expect(await field.isVisible()).toBe(false);
  await host.look('own-house-kept', { whole: true });

  const phone = await Person.arrives(premises.browser, 'host again', 'phone');
  await phone.page.goto(link);
  await phone.heading(houseWords.keep, 2).waitFor();
  expect(await phone.page.locator('.tasting').count()).toBe(1);
  await phone.text(houseWords.show).click();
  await phone.look('own-house-phone', { whole: true });
  const stranger = await Person.arrives(premises.browser, 'stranger', 'phone');
  await stranger.page.goto(`${premises.room.origin}/host`);
  await stranger.page.setViewportSize({ width: 360, height: 640 });
  await stranger.heading(houseWords.none, 2).waitFor();
  await stranger.look('own-house-offer-phone', { whole: true });
  expect([...host.faults, ...phone.faults, ...stranger.faults]).toEqual([]);
});

it('offers nothing of the kind on a server that does not say so', async () => {
  await premises.powerCut();
  await premises.serve();
  const person = await Person.arrives(premises.browser, 'another', 'phone');
  const offered = person.page.waitForResponse((response) => response.url().endsWith('/api/houses'));
  await person.page.goto(`${premises.room.origin}/host`);
  expect(await (await offered).json()).toBeNull();
  await person.heading(words.key.title, 1).waitFor();
  expect(await person.page.getByRole('heading', { level: 2 }).count()).toBe(0);
  expect(person.faults).toEqual([]);
});
