import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openSqliteStore, type SqliteStore } from '../../server/store/sqlite.ts';
import { credentials } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { temporaryFolder } from '../server/support/process.ts';
import type { StoredEvening } from '../stored/evenings.ts';
import { layPages, layStore, releasesWithPages } from '../stored/releases.ts';
import { lendBrowser } from '../support/browser.ts';

/** The last release whose pages are kept; its words stand here as they were, for they are in those pages. */
const release = releasesWithPages().at(-1) ?? '';
const was = {
  name: 'Your name',
  sit: 'Take my seat',
  accept: 'I have read this',
  share: 'Share it with my name',
  saved: 'Saved',
} as const;

const data = temporaryFolder();
const pages = temporaryFolder();
let browser: Browser;
let house: House;
let store: SqliteStore;
let evening: StoredEvening;

beforeAll(async () => {
  const evenings = layStore(release, data.path);
  layPages(release, pages.path);
  const found = evenings.find(({ name }) => name === 'gathering');
  if (found === undefined) throw new Error(`No evening of ${release} stands at its beginning.`);
  evening = found;
  store = openSqliteStore(join(data.path, 'quietpour.db'));
  house = await House.open({ store, pages: pages.path });
  browser = await lendBrowser();
});
afterAll(async () => {
  await browser.close();
  await house.close();
  data.remove();
  pages.remove();
});

/** A phone that had the page of before when the server was brought up to date. */
async function phone(): Promise<{ readonly page: Page; readonly faults: string[] }> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, locale: 'en-GB' });
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  await page.goto(`${house.url}/j/${evening.code}`);
  return { page, faults };
}

it(`lets the pages of ${release} sit down, follow, write and share on today's server, to the end`, async () => {
  const { page, faults } = await phone();
  const shown = { ...credentials('host', evening.tasting, evening.hostKey), protocol: 1 };
  const host = await house.enter(shown);
  await page.getByLabel(was.name).fill('Zoë');
  await page.getByRole('button', { name: was.sit }).click();
  await page.getByRole('button', { name: was.accept }).click();

  // Ids of their own: what was asked when the fixture was made is remembered with its answer.
  let asked = 0;
  const conduct = async (ask: object) => {
    asked += 1;
    expect(await host.host(ask, `after-the-upgrade-${asked}`)).toMatchObject({ ok: true });
  };
  await conduct({ type: 'JumpTo', cue: 'eins/first/look' });
  await page.getByRole('heading', { level: 1, name: 'Look' }).waitFor();
  await conduct({ type: 'JumpTo', cue: 'eins/writing/write/nose' });
  const field = page.getByRole('textbox').first();
  await field.fill('Rauch und Salz');
  await page.getByText(was.saved).first().waitFor();

  await conduct({ type: 'JumpTo', cue: 'flight-1/discussion' });
  await conduct({ type: 'OpenDiscussion', pours: ['eins'] });
  await page.getByRole('radio', { name: was.share }).first().check({ timeout: 30_000 });
  await expect
    .poll(() => JSON.stringify(host.last('board')), { timeout: 30_000 })
    .toContain('Rauch und Salz');

  await conduct({ type: 'Finish' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.screenshot({ path: join(import.meta.dirname, '../screenshots/upgrade-guest-finished.png') });
  expect(faults).toEqual([]);
});
