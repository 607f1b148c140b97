import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seatLink } from '../../host/access/key-link.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { paperWords as words } from '../../shared/language/en/paper.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { hasEngine, hasWebKitPrinter } from '../engines/installed.ts';
import { printInWebKit } from '../engines/print-in-webkit.ts';
import { openFirefox } from '../engines/puppeteer.ts';
import { House } from '../server/support/house.ts';
import { aPlan } from '../server/support/plans.ts';
import { momentNow } from '../support/moment.ts';
import { type DrawnPage, readPdf } from '../support/pdf.ts';

/** Two mats, two sheets of notes and one of labels; a shopping list flows. */
const kinds = { mats: 2, notes: 2, labels: 1, shopping: undefined } as const;
type Kind = keyof typeof kinds;
const all = Object.keys(kinds) as Kind[];
const sheets = (['A4', 'Letter'] as const).flatMap((paper) =>
  [false, true].map((lying) => ({ paper, lying })),
);
const language = `?language=${(momentNow()?.locale ?? 'en').split('-')[0]}`;
const ready = "document.querySelector('.paper-print button') !== null";
const choose = (paper: 'A4' | 'Letter') =>
  `[...document.querySelectorAll('input[type=radio]')].find((each) => each.labels[0].textContent.includes(${JSON.stringify(words.sizes[paper])}))?.click()`;

const firefox = hasEngine('firefox');
const webkit = hasWebKitPrinter();

let house: House;
let made: CreatedTasting;
beforeAll(async () => {
  house = await House.open();
  made = await house.plan(aPlan({ ...demoEvening, guests: 2, remoteGuests: 3, lawOf: 'AT' }));
});
afterAll(() => house?.close());

const hostLink = () => `${house.url}/host${language}#tasting=${made.tasting}&key=${made.hostKey}`;
const paperLink = (kind: Kind) => `${house.url}/host${language}#/t/${made.tasting}/print/${kind}`;

/** As many sheets as there should be and none empty; circles and the line for a ruler have their size. */
function holds(kind: Kind, lying: boolean, pages: readonly DrawnPage[]): void {
  if (kinds[kind] !== undefined)
    expect(pages, `${kind}, ${lying ? 'lying' : 'standing'}`).toHaveLength(kinds[kind]);
  for (const drawn of pages) {
    expect(drawn.texts).toBeGreaterThan(1);
    expect(drawn.widthMm > drawn.heightMm).toBe(lying);
    if (kind !== 'mats') continue;
    const sizes = drawn.stroked.map(({ widthMm, heightMm }) => Math.max(widthMm, heightMm));
    expect(sizes.filter((size) => Math.abs(size - 100) < 0.3)).toHaveLength(1);
    expect(sizes.filter((size) => Math.abs(size - 60) < 0.3)).toHaveLength(6);
    for (const path of drawn.stroked) {
      expect(Math.min(path.leftMm, path.topMm)).toBeGreaterThan(5);
      expect(path.leftMm + path.widthMm).toBeLessThan(drawn.widthMm - 5);
      expect(path.topMm + path.heightMm).toBeLessThan(drawn.heightMm - 5);
    }
  }
}

describe('paper of other engines', () => {
  it.skipIf(!firefox)('fits every sheet in Firefox, at true size and with none empty', async () => {
    const device = await openFirefox({ width: 1024, height: 768 });
    try {
      await device.open(hostLink());
      for (const kind of all) {
        await device.open(paperLink(kind));
        await expect.poll(() => device.read<boolean>(ready), { timeout: 20_000 }).toBe(true);
        for (const sheet of sheets) {
          await device.read(choose(sheet.paper));
          holds(kind, sheet.lying, readPdf(await device.print(sheet)));
        }
      }
    } finally {
      await device.close();
    }
  });

  it.skipIf(!firefox)('leaves no empty sheet behind a short keepsake in Firefox', async () => {
    const ended = await house.plan();
    const conductor = await house.host(ended);
    await conductor.host({ type: 'OpenDoors' });
    const noor = await house.guest(ended, 'Noor');
    await conductor.host({ type: 'Finish' });
    const device = await openFirefox({ width: 390, height: 844 });
    try {
      await device.open(seatLink(house.url, ended.tasting, noor.key));
      const here = "document.querySelector('.take-away') !== null";
      await expect.poll(() => device.read<boolean>(here), { timeout: 20_000 }).toBe(true);
      for (const sheet of sheets) expect(readPdf(await device.print(sheet))).toHaveLength(1);
    } finally {
      await device.close();
    }
  });

  it.skipIf(!webkit).each(['A4', 'Letter'] as const)(
    'fits every sheet in WebKit on %s, whose millimetres are longer, whatever the margins',
    async (paper) => {
      for (const kind of all) {
        const asked = [
          { paper, lying: false, marginMm: 10 },
          { paper, lying: true, marginMm: 6.35 },
        ];
        const printed = await printInWebKit({
          open: hostLink(),
          steps: [
            // The key is taken out of the address when it is kept.
            ["!location.hash.includes('key=')", `location.assign(${JSON.stringify(paperLink(kind))})`],
            [ready, choose(paper)],
          ],
          sheets: asked,
        });
        for (const [at, bytes] of printed.entries()) holds(kind, asked[at]?.lying === true, readPdf(bytes));
      }
    },
  );
});
