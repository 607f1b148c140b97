import type { Browser, Page, Route } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { hostLink, seatLink } from '../../host/access/key-link.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { planWords } from '../../shared/language/en/plan.ts';
import type { StoredPlan } from '../../shared/wire/http.ts';
import { House, houseKey } from '../server/support/house.ts';
import { aPlan } from '../server/support/plans.ts';
import { lendBrowser } from '../support/browser.ts';
import { Person } from './person.ts';

let browser: Browser;
let house: House;
beforeAll(async () => {
  browser = await lendBrowser();
  house = await House.open();
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

/** As a browser does that erases what a page keeps: storage, databases, caches, workers, cookies. */
async function forgets({ page }: Person): Promise<void> {
  await page.goto('about:blank');
  const debug = await page.context().newCDPSession(page);
  await debug.send('Storage.clearDataForOrigin', { origin: house.url, storageTypes: 'all' });
  await debug.detach();
}

it('a host whose browser forgot everything was told in time to keep the link, which brings all evenings back', async () => {
  await house.plan(aPlan({ title: 'Kept by a link' }));
  const host = await Person.arrives(browser, 'forgetful-host', 'tablet');
  await host.page.goto(`${house.url}/host#key=${houseKey}`);
  await host.heading('Kept by a link').waitFor();
  await host.text(hostWords.home.keepLink).waitFor();
  await host.look('host-keeps-link', { whole: true });
  await forgets(host);
  await host.page.goto(`${house.url}/host`);
  await host.heading(hostWords.key.title, 1).waitFor();
  await host.field(hostWords.key.field).fill(`${house.url}/host#key=${houseKey}`);
  await host.button(hostWords.key.open).click();
  await host.heading('Kept by a link').waitFor();
  await host.page.reload();
  await host.heading('Kept by a link').waitFor();
  // It asks first, and may not.
  expect(host.faults.filter((fault) => !fault.includes('401'))).toEqual([]);
  await host.leaves();
});

it('a guest whose browser forgot everything comes back to notes and evenings by the private link', async () => {
  const made = await house.plan();
  const conductor = await house.host(made);
  await conductor.host({ type: 'OpenDoors' });
  const noor = await house.guest(made, 'Noor');
  await conductor.host({ type: 'JumpTo', cue: 'one/writing/write/nose' });
  await noor.save({ pour: 'one', field: 'nose', value: 'wet slate' });
  await conductor.host({ type: 'Finish' });
  const guest = await Person.arrives(browser, 'forgetful-guest', 'phone');
  await guest.page.goto(seatLink(house.url, made.tasting, noor.key));
  await guest.heading(keepsakeWords.title, 1).waitFor();
  await guest.text(keepsakeWords.link.hint).waitFor();
  await guest.button(keepsakeWords.link.show).click();
  const link = await guest.field(keepsakeWords.link.label).inputValue();
  await guest.button(keepsakeWords.link.remove).click();
  await guest.look('guest-remove');
  await guest.button(keepsakeWords.link.keep).click();
  await forgets(guest);
  await guest.page.goto(house.url);
  await guest.field(guestWords.door.code).waitFor();
  expect(await guest.button(keepsakeWords.evenings.open).count()).toBe(0);
  await guest.page.goto(link);
  await guest.heading(keepsakeWords.title, 1).waitFor();
  await guest
    .text(/wet slate/)
    .first()
    .waitFor();
  await guest.button(keepsakeWords.evenings.open).click();
  await guest.text(keepsakeWords.evenings.lead).waitFor();
  await guest.heading('Peat and patience', 2).waitFor();
  await guest.look('guest-evenings-again', { whole: true });
  expect(guest.faults).toEqual([]);
  await guest.leaves();
});

/** Puts the keyboard into the first field as soon as it is on the page, as a quick finger on a slow phone does. */
const quickFinger = (): void => {
  const seen = new MutationObserver(() => {
    const field = document.querySelector('input');
    if (field === null) return;
    seen.disconnect();
    field.focus();
  });
  seen.observe(document, { childList: true, subtree: true });
};
const drawn = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) =>
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve, 100))),
      ),
  );
const focused = (page: Page) => page.evaluate(() => document.activeElement?.localName);

it('a page gives the keyboard to its title, and leaves it in a field that somebody was quick to touch', async () => {
  const guest = await Person.arrives(browser, 'quick', 'phone');
  for (const { quick, has } of [
    { quick: false, has: 'h1' },
    { quick: true, has: 'input' },
  ]) {
    if (quick) await guest.page.addInitScript(quickFinger);
    await guest.page.goto(house.url);
    await guest.field(guestWords.door.code).waitFor();
    await drawn(guest.page);
    expect(await focused(guest.page)).toBe(has);
  }
  await guest.leaves();
});

it('two devices that open a plan in one moment draw its codes once, and neither is told of a change', async () => {
  const made = await house.plan(aPlan({ blind: true }));
  const stored = async () =>
    (await house.ask<StoredPlan>('GET', `/api/tastings/${made.tasting}/plan`, { key: made.hostKey })).body;
  expect((await stored()).plan.codes).toEqual({});
  const held = new Map<Person, Route>();
  const hosts: Person[] = [];
  const passing = new Set<Person>();
  for (const name of ['first-tablet', 'second-tablet']) {
    const host = await Person.arrives(browser, name, 'tablet');
    hosts.push(host);
    await host.page.route('**/plan', (route) => {
      // A page that waits for long asks again.
      if (route.request().method() === 'PUT' && !passing.has(host)) held.set(host, route);
      else void route.continue();
    });
    await host.page.goto(hostLink(house.url, made.tasting, made.hostKey));
    await host.page.goto(`${house.url}/host#/t/${made.tasting}/plan/pours`);
  }
  // Both have drawn, and neither has sent.
  await expect.poll(() => held.size).toBe(2);
  for (const [index, host] of hosts.entries()) {
    const answered = host.page.waitForResponse((each) => each.request().method() === 'PUT');
    passing.add(host);
    await held.get(host)?.continue();
    expect((await answered).status()).toBe(index === 0 ? 200 : 409);
  }
  const { plan, revision } = await stored();
  expect(revision).toBe(2);
  for (const host of hosts) {
    for (const code of Object.values(plan.codes)) await host.text(new RegExp(code)).first().waitFor();
    expect(await host.heading(planWords.keeping.elsewhereTitle).count()).toBe(0);
    await host.leaves();
  }
});

it('a guest whose evening ended before its first glass has a page to take home, and waits for nothing', async () => {
  const made = await house.plan();
  const conductor = await house.host(made);
  await conductor.host({ type: 'OpenDoors' });
  const noor = await house.guest(made, 'Noor');
  await conductor.host({ type: 'Finish' });
  const guest = await Person.arrives(browser, 'early-end', 'phone');
  await guest.page.goto(seatLink(house.url, made.tasting, noor.key));
  await guest.button(keepsakeWords.take.page).waitFor();
  expect(await guest.text(keepsakeWords.fetching).count()).toBe(0);
  await guest.leaves();
});
