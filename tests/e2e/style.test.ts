import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lendBrowser } from '../support/browser.ts';
import { forgetFolder, type SpawnedServer, spawnServer, temporaryFolder } from '../support/server.ts';
import { Person, sizes } from './person.ts';

let browser: Browser;
let folder: string;
let server: SpawnedServer;

beforeAll(async () => {
  browser = await lendBrowser();
  folder = await temporaryFolder();
  server = await spawnServer({ folder, from: 'bundle' });
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  if (folder !== undefined) await forgetFolder(folder);
});

describe('every part of both apps, on the page for developers', () => {
  for (const [size, theme] of [
    ['tablet', 'light'],
    ['phone', 'dark'],
  ] as const) {
    it(`has no barrier and fits on a ${size} (${sizes[size].width} px) in a ${theme} room`, async () => {
      const person = await Person.arrives(browser, `style-${size}-${theme}`, size, theme);
      await person.page.goto(`${server.origin}/style`);
      await person.page.getByRole('heading', { level: 1 }).waitFor();
      await person.look(`style-${size}-${theme}`, { whole: true });
      await person.page.emulateMedia({ forcedColors: 'active' });
      await person.photograph(`style-${size}-${theme}-forced`, true);
      expect(person.faults).toEqual([]);
      await person.leaves();
    });
  }

  it('gives the focus back to what opened a dialog', async () => {
    const person = await Person.arrives(browser, 'style-dialog', 'phone');
    await person.page.goto(`${server.origin}/style`);
    const opener = person.page.getByRole('button', { name: 'End the evening' }).first();
    await opener.focus();
    await person.page.keyboard.press('Enter');
    const dialog = person.page.getByRole('dialog');
    await dialog.waitFor();
    expect(await dialog.evaluate((box) => box.contains(document.activeElement))).toBe(true);
    await person.look('style-dialog');
    await person.page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
    expect(await opener.evaluate((button) => button === document.activeElement)).toBe(true);
    expect(person.faults).toEqual([]);
    await person.leaves();
  });
});
