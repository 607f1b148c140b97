import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pourId } from '../../core/ids.ts';
import { levelOf } from '../../core/planning/serving/pouring.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { aPlan } from '../server/support/plans.ts';
import { lendBrowser } from '../support/browser.ts';
import { Person } from './person.ts';

const { placeItems } = hostWords.doors;

/** [S6] Somebody who helps the host, with a phone and the link for it. */
describe('the page of a helper', () => {
  let browser: Browser;
  let house: House;
  let made: CreatedTasting;
  let host: Device;
  let noor: Awaited<ReturnType<House['guest']>>;
  let helper: Person;

  /** The link from the host's own button, as it stands beside the code, at the address of these tests. */
  async function linkShown(): Promise<string> {
    const tablet = await Person.arrives(browser, 'host', 'tablet');
    await tablet.page.goto(`${house.url}/host#tasting=${made.tasting}&key=${made.hostKey}`);
    await tablet.page.goto(`${house.url}/host#/t/${made.tasting}/pouring`);
    await tablet.button(words.helper).click();
    await tablet.page.getByText(words.helperHint).waitFor();
    await tablet.button(words.helps.show).click();
    const link = tablet.page.getByText('#helper=');
    await link.waitFor();
    await tablet.look('host-helper-link');
    const { pathname, hash } = new URL((await link.textContent())?.trim() ?? '');
    expect(tablet.faults).toEqual([]);
    await tablet.leaves();
    return `${house.url}${pathname}${hash}`;
  }

  beforeAll(async () => {
    browser = await lendBrowser();
    house = await House.open();
    made = await house.plan(
      aPlan({ blind: true, codes: { one: '731', two: '402', three: '566' }, guests: 2 }),
    );
    host = await house.host(made);
    const link = await linkShown();
    helper = await Person.arrives(browser, 'helper', 'phone');
    await helper.page.goto(link);
  });
  afterAll(async () => {
    await browser?.close();
    await house?.close();
  });

  it('is where the link leads, and has the glasses to pour', async () => {
    await helper.heading('Peat and patience', 1).waitFor();
    await helper.page.getByText(words.helps.lead).waitFor();
    await helper.text(words.helps.stages.planned).waitFor();
    expect(await helper.page.evaluate(() => window.location.hash)).not.toContain('key=');
    for (const item of [placeItems.lids, placeItems.water, placeItems.spit, placeItems.bread])
      await helper.text(item).waitFor();
    await helper.look('helper-page', { whole: true });
  });

  it('pours with one tap, which the host sees', async () => {
    const glass = helper.button(new RegExp(`^${words.glass(words.place(1), '731')}`));
    expect((await glass.boundingBox())?.height).toBeGreaterThan(40);
    await glass.click();
    await host.until('pouring', ({ levels }) => levelOf(levels, pourId('one'), 1) > 0);
  });

  it('answers who calls, and is told no more of them', async () => {
    await host.host({ type: 'OpenDoors' });
    noor = await house.guest(made, 'Noor');
    await helper.text(words.helps.stages['under-way']).waitFor();
    await noor.guest({ type: 'GiveSignal', signal: 'needs-host', cue: 'gathering' });
    await helper.heading(words.helps.calls, 2).waitFor();
    await helper.look('helper-page-called');
    await helper.button(hostWords.table.answered).click();
    await helper.heading(words.helps.calls, 2).waitFor({ state: 'detached' });
    await noor.until('seat', ({ signal }) => signal === null);
  });

  it('leads to none of the host’s pages, by hand neither', async () => {
    expect(await helper.page.getByRole('link').count()).toBe(0);
    for (const part of ['room', 'plan', 'doors', 'recap']) {
      await helper.page.goto(`${house.url}/host#/t/${made.tasting}/${part}`);
      await helper.text(hostWords.key.title).waitFor();
    }
    await helper.page.goto(`${house.url}/host#/t/${made.tasting}/help`);
    await helper.page.getByText(words.helps.lead).waitFor();
  });

  it('ends when the host ends it, with a sentence', async () => {
    await house.ask('DELETE', `/api/tastings/${made.tasting}/keys/helper`, { key: made.hostKey });
    await helper.text(words.helps.ended).waitFor();
    expect(helper.faults).toEqual([]);
  });
});
