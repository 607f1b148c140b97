import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pourId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import { keepsakeHtml } from '../../guest/keepsake/keepsake-html.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import { language, vocabularyOf } from '../shared/guest/keepsake-words.ts';
import { lendBrowser } from '../support/browser.ts';
import { readPdf } from '../support/pdf.ts';

/** An evening of sixteen pours with notes, stories and what a room of forty guessed of all six facts, as one saved page. */
const sentence = 'Pear skin and wet slate, then a long walk home past the bakery. ';
const spread = Array.from({ length: 20 }, (_, at) => ({ value: 2000 + at, guests: 2 }));
const facts = (['style', 'origin', 'vintage', 'age', 'abv', 'price'] as const).map((fact) => ({
  fact,
  truth: fact === 'style' ? 'riesling' : fact === 'origin' ? 'germany/mosel' : 2004,
  guests: 40,
  spread: fact === 'style' || fact === 'origin' ? [{ value: 'riesling', guests: 40 }] : spread,
  chance: 0.01,
  approximate: false,
  nearest: [],
}));
const ids = Array.from({ length: 16 }, (_, at) => pourId(`pour${at}`));
const keepsake = {
  title: 'Sixteen cellars',
  place: 'The Net Loft',
  hostName: 'Maren',
  startsAt: null,
  timeZone: 'UTC',
  guest: 'Ingrid',
  drink: 'wine',
  trials: [],
  guess: null,
  pours: ids.map((pour, at) => ({
    position: at + 1,
    pour,
    drink: 'wine',
    code: String(300 + at),
    facts: {
      name: `Cellar ${at + 1}`,
      story: sentence.repeat(4),
      reading: [],
      link: null,
      photos: { front: null, back: null },
    },
    entries: (['look', 'nose', 'palate', 'finish', 'thoughts'] as const).map((field) => ({
      pour,
      field,
      value: sentence.repeat(1 + (at % 3)),
      revision: 1,
      savedAt: epochMs(1),
    })),
    truth: null,
  })),
  room: {
    results: [],
    guesses: ids.map((pour) => ({ pour, counts: { counted: 40, of: 40 }, currency: 'EUR', facts })),
  },
} as unknown as Keepsake;

/** Sizes of ISO 216 and of ANSI/ASME Y14.1, in mm; the page's own margin is 14 mm on each side. */
const papers = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
const margin = 14;
/** CSS Values and Units 4: 96 px to the inch. */
const px = (mm: number): number => (mm * 96) / 25.4;

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await lendBrowser();
  page = await browser.newPage();
  await page.setContent(keepsakeHtml(keepsake, vocabularyOf, language, new Map()));
});
afterAll(() => browser?.close());

describe('the evening on paper', () => {
  it.each(['A4', 'Letter'] as const)(
    'parts no glass that fits a page, and leaves none empty, on %s',
    async (format) => {
      const [width, height] = papers[format];
      const room = px(height - 2 * margin);
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: Math.floor(px(width - 2 * margin)), height: 1000 });
      const blocks = await page.evaluate(() =>
        [...document.querySelectorAll('header, article')].map((block) => {
          const { marginBlockStart } = getComputedStyle(block);
          return { height: block.getBoundingClientRect().height, gap: Number.parseFloat(marginBlockStart) };
        }),
      );
      expect(blocks).toHaveLength(17);
      for (const block of blocks) expect(block.height).toBeLessThan(room);
      // One after the other, each on the next page where it does not fit.
      let [pages, filled] = [1, 0];
      for (const block of blocks) {
        const below = filled === 0 ? block.height : filled + block.gap + block.height;
        if (below > room) [pages, filled] = [pages + 1, block.height];
        else filled = below;
      }
      const printed = readPdf(await page.pdf({ format, preferCSSPageSize: false }));
      expect(printed).toHaveLength(pages);
      for (const sheet of printed) {
        expect(Math.abs(sheet.widthMm - width)).toBeLessThan(1);
        expect(Math.abs(sheet.heightMm - height)).toBeLessThan(1);
      }
    },
  );

  it('holds sixteen glasses and the guesses of forty without sliding sideways on a small phone', async () => {
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize({ width: 320, height: 568 });
    const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(sideways).toBeLessThanOrEqual(0);
  });
});
