import puppeteer from 'puppeteer-core';
import { momentNow } from '../support/moment.ts';
import type { Device, Size } from './device.ts';
import { programOf } from './installed.ts';

/** A Firefox of its own, spoken to by WebDriver BiDi. */
export async function openFirefox({ width, height }: Size, dark = false): Promise<Device> {
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: programOf('firefox-esr|firefox') ?? '',
    headless: true,
    extraPrefsFirefox: {
      'intl.accept_languages': momentNow()?.locale ?? 'en-GB',
      'layout.css.prefers-color-scheme.content-override': dark ? 0 : 1,
      'media.autoplay.default': 0,
    },
  });
  // The first tab of a window that nobody looks at never gets the focus.
  const page = await browser.newPage();
  await page.setViewport({ width, height });
  return {
    engine: 'firefox',
    open: async (address) => {
      await page.goto(address, { waitUntil: 'load' });
    },
    read: <Value>(expression: string) => page.evaluate(expression) as Promise<Value>,
    press: (x, y) => page.mouse.click(x, y),
    type: (text) => page.keyboard.type(text),
    picture: async () => Buffer.from(await page.screenshot()),
    print: async ({ widthMm, heightMm }) =>
      Buffer.from(await page.pdf({ width: `${widthMm}mm`, height: `${heightMm}mm`, printBackground: true })),
    close: () => browser.close(),
  };
}
