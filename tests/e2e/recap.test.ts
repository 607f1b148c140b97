import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostWords } from '../../shared/language/en/host.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import type { RecapExport } from '../../shared/wire/http.ts';
import { houseKey } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { type EveningBehind, playAnEvening } from './evening-behind.ts';
import { Person, sizes } from './person.ts';

let browser: Browser;
let evening: EveningBehind;
beforeAll(async () => {
  browser = await lendBrowser();
  evening = await playAnEvening();
});
afterAll(async () => {
  await browser?.close();
  await evening?.house.close();
});

async function opened(size: keyof typeof sizes, theme: 'light' | 'dark'): Promise<Person> {
  const person = await Person.arrives(browser, `recap-${size}-${theme}`, size, theme);
  await person.page.goto(`${evening.house.url}/host#key=${houseKey}`);
  await person.page.getByRole('link', { name: hostWords.home.recap }).click();
  await person.heading(words.title, 1).waitFor();
  return person;
}

describe('the recap of an evening, in a browser', () => {
  for (const [size, theme] of [
    ['tablet', 'light'],
    ['phone', 'dark'],
  ] as const) {
    it(`has no barrier and fits on a ${size} (${sizes[size].width} px) in a ${theme} room`, async () => {
      const person = await opened(size, theme);
      await person.look(`recap-${size}-${theme}`, { whole: true });
      for (const fold of await person.text(words.asTable).all()) await fold.click();
      for (const fold of await person.text(words.reckoned).all()) await fold.click();
      await person.look(`recap-${size}-${theme}-unfolded`, { whole: true });
      expect(person.faults).toEqual([]);
      await person.leaves();
    });
  }

  it('says who won, how sure that is and what it rests on, and draws each finding with words', async () => {
    const person = await opened('tablet', 'light');
    await person.heading(words.ranking.title, 2).waitFor();
    for (const title of [words.liking.title, words.words.title, words.colours.title, words.timing.title])
      await person.heading(title, 2).waitFor();
    const pictures = await person.page.getByRole('img').all();
    expect(pictures.length).toBeGreaterThan(20);
    for (const picture of pictures) expect(await picture.getAttribute('aria-label')).not.toBe('');
    await person.page.getByText(words.limits['small-panel'](9)).first().waitFor({ state: 'attached' });
    expect(await person.page.locator('main').textContent()).not.toMatch(/NaN|undefined|null/);
    await person.leaves();
  });

  it('hands over its files, and deletes the evening once it was asked twice', async () => {
    const person = await opened('tablet', 'light');
    const fetched = async (name: string) => {
      const [file] = await Promise.all([person.page.waitForEvent('download'), person.button(name).click()]);
      return readFile(await file.path(), 'utf8');
    };
    expect((JSON.parse(await fetched(words.take.json)) as RecapExport).recap.guests).toBe(9);
    expect(await fetched(words.take.csv)).toContain('"\'=Six lanterns');

    await person.button(words.remove.begin).click();
    await person.look('recap-delete');
    expect(await person.button(words.remove.go).isDisabled()).toBe(true);
    await person.button(words.remove.keep).click();
    await person.button(words.remove.begin).click();
    await person.page.getByRole('switch', { name: words.remove.understood }).click();
    await person.button(words.remove.go).click();
    await person.heading(words.remove.gone).waitFor();
    // The page asks for what is no more, to be sure: the browser says so.
    expect(person.faults.filter((fault) => !fault.includes('404'))).toEqual([]);
    const { made, house } = evening;
    const answer = await house.ask('GET', `/api/tastings/${made.tasting}/plan`, { key: houseKey });
    expect(answer.status).toBe(404);
    await person.leaves();
  });
});
