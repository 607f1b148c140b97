import { hostWords } from '../../shared/language/en/host.ts';
import { openBrowser } from '../support/browser.ts';
import { startChild } from './child.ts';
import { type Figure, median } from './figures.ts';

/** From going to the list until its first evenings can be tapped, with everything that the page is made of in the cache. */
export async function measureList(evenings: number, rounds: number): Promise<Figure[]> {
  const ours = startChild('our-server');
  const browser = await openBrowser();
  try {
    await ours.ask('fill', { sessions: evenings, events: 100 });
    const { port, houseKey } = await ours.ask<{ port: number; houseKey: string }>('listen');
    const context = await browser.newContext({ viewport: { width: 1024, height: 768 }, locale: 'en-GB' });
    await context.addInitScript({ content: 'globalThis.__name ??= (marked) => marked;' });
    const page = await context.newPage();
    await page.goto(`http://127.0.0.1:${port}/host#key=${houseKey}`);
    await page.getByRole('heading', { level: 1, name: hostWords.home.title }).waitFor();
    const times: number[] = [];
    for (let round = 0; round < rounds; round += 1) {
      await page.goto(`http://127.0.0.1:${port}/host`, { waitUntil: 'commit' });
      times.push(
        await page.evaluate(
          () =>
            new Promise<number>((done) => {
              const look = (): void => {
                if (document.querySelector('.tasting') === null) requestAnimationFrame(look);
                else requestAnimationFrame(() => setTimeout(() => done(performance.now()), 0));
              };
              look();
            }),
        ),
      );
    }
    const name = `list of ${evenings.toLocaleString('en')} evenings, usable`;
    return [{ name, value: median(times), unit: 'ms', goal: 300 }];
  } finally {
    await browser.close();
    await ours.stop();
  }
}
