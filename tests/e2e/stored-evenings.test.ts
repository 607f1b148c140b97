import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import { House } from '../server/support/house.ts';
import { temporaryFolder } from '../server/support/process.ts';
import { layStore, releases } from '../stored/releases.ts';
import { lendBrowser } from '../support/browser.ts';
import { readPdf } from '../support/pdf.ts';
import { Person } from './person.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await lendBrowser();
});
afterAll(() => browser?.close());

/** What a host of before finds in the pages of today: the paper of an evening and what became of it. */
describe.each(releases)('the evenings that %s stored, on today’s pages', (release) => {
  const folder = temporaryFolder();
  // Those under way have the plans of the others; each is conducted to its end beside this.
  const evenings = layStore(release, folder.path).filter(
    ({ stands, name }) => stands !== 'under-way' || name === 'own orders',
  );
  let house: House;
  beforeAll(async () => {
    house = await House.open({ store: openSqliteStore(join(folder.path, 'quietpour.db')) });
  });
  afterAll(async () => {
    await house.close();
    folder.remove();
  });

  it.each(evenings)('print the run sheet and the recap of $name', async ({ tasting, hostKey, stands }) => {
    const host = await Person.arrives(browser, 'host', 'tablet');
    const { page } = host;
    const pages = async () => readPdf(await page.pdf({ preferCSSPageSize: true }));
    await page.goto(`${house.url}/host#tasting=${tasting}&key=${hostKey}`);
    await page.waitForURL(/#\/t\//);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.goto(`${house.url}/host#/t/${tasting}/print/run-sheet`);
    await page.getByRole('button', { name: paperWords.print, exact: true }).waitFor();
    await page.getByRole('table').first().waitFor();
    expect((await pages()).length).toBeGreaterThan(0);
    if (stands === 'finished') {
      await page.goto(`${house.url}/host#/t/${tasting}/recap`);
      await page.getByRole('heading', { name: recapWords.take.title }).waitFor();
      expect((await pages()).length).toBeGreaterThan(0);
    }
    expect(host.faults).toEqual([]);
    await page.context().close();
  });
});
