import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { guestWords as words } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { openBrowser } from '../support/browser.ts';
import { startChild } from './child.ts';
import { newId, type OpenEvening, openEvening } from './evening.ts';
import { type Figure, median } from './figures.ts';

/** A middling phone on a poor line, as Chromium makes them: 4 times slower, 1.6 Mbit/s, 150 ms. */
const poor = { slower: 4, bytesPerSecond: (1.6 * 1024 * 1024) / 8, latencyMs: 150 } as const;

/** What the built pages weigh and how soon a hand can use them, in a real browser. Needs `npm run build`. */
export async function measurePages(runs: number): Promise<Figure[]> {
  const ours = startChild('our-server');
  const browser = await openBrowser();
  try {
    const { port, houseKey } = await ours.ask<{ port: number; houseKey: string }>('listen');
    const evening = await openEvening(port, houseKey, planSchema.parse(demoEvening));
    const origin = `http://127.0.0.1:${port}`;
    const invitation = `${origin}/j/${evening.code}`;
    const soon: Usable[] = [];
    for (let run = 0; run < runs; run += 1) soon.push(await interactiveAfter(browser, invitation));
    const guest = await followEvening(browser, invitation, evening, soon.at(-1)?.files ?? []);
    const host = await loadHost(browser, `${origin}/host#key=${houseKey}`);
    return [
      {
        name: 'guest page: script before the first word, gzipped',
        value: guest.first.script,
        unit: 'kB',
        goal: 43,
      },
      { name: 'guest page: script in all, gzipped', value: guest.all.script, unit: 'kB' },
      {
        name: 'guest page: requests for script before the first word',
        value: guest.first.scripts,
        unit: '',
        goal: 1,
      },
      {
        name: 'guest page: requests for style before the first word',
        value: guest.first.styles,
        unit: '',
        goal: 1,
      },
      {
        name: 'guest page: files of script and style in all',
        value: guest.all.scripts + guest.all.styles,
        unit: '',
      },
      { name: 'guest page: web fonts', value: guest.all.fonts, unit: '', goal: 0 },
      {
        name: `guest page: usable, ${poor.slower}x slower, 1.6 Mbit/s, ${poor.latencyMs} ms`,
        value: median(soon.map(({ ms }) => ms)) / 1000,
        unit: 's',
        goal: 2.5,
      },
      {
        name: 'guest page: layout shift on a change of cue, worst',
        value: guest.shift,
        unit: '',
        goal: 0.02,
      },
      { name: 'host page: script that it loads first, gzipped', value: host, unit: 'kB', goal: 120 },
    ];
  } finally {
    await browser.close();
    await ours.stop();
  }
}

interface Usable {
  readonly ms: number;
  /** Paths of all that had been fetched by then. */
  readonly files: readonly string[];
}

interface Load {
  /** In kB of 1000, each file gzipped by itself. */
  readonly script: number;
  readonly scripts: number;
  readonly styles: number;
  readonly fonts: number;
}

/** Notes what a page and its worker load, each file once: what is fetched ahead counts like what is run. */
function weigh(context: BrowserContext): (only?: readonly string[]) => Promise<Load> {
  const files = new Map<string, string>();
  context.on('response', (response) => {
    const path = new URL(response.url()).pathname;
    if (/\.(js|css|woff2?|ttf|otf)$/.test(path) && response.ok() && !files.has(path)) {
      files.set(path, response.url());
    }
  });
  return async (only) => {
    const named = [...files].filter(([path]) => only?.includes(path) ?? true);
    const count = (ending: RegExp) => named.filter(([path]) => ending.test(path)).length;
    const scripts = named.filter(([path]) => path.endsWith('.js'));
    // Of what was fetched ahead the browser shows no body.
    const bodies = await Promise.all(scripts.map(([, address]) => fetchPlain(address)));
    return {
      script: bodies.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length / 1000, 0),
      scripts: bodies.length,
      styles: count(/\.css$/),
      fonts: count(/\.(woff2?|ttf|otf)$/),
    };
  };
}

async function fetchPlain(address: string): Promise<Buffer> {
  const response = await fetch(address, { headers: { 'accept-encoding': 'identity' } });
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return Buffer.from(await response.arrayBuffer());
}

/** From the first request until the name can be typed and the page has had time to draw twice. */
async function interactiveAfter(browser: Browser, address: string): Promise<Usable> {
  const context = await phone(browser);
  try {
    const page = await context.newPage();
    const line = await context.newCDPSession(page);
    await line.send('Emulation.setCPUThrottlingRate', { rate: poor.slower });
    await line.send('Network.enable');
    await line.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: poor.latencyMs,
      downloadThroughput: poor.bytesPerSecond,
      uploadThroughput: poor.bytesPerSecond / 2,
    });
    await page.goto(address, { waitUntil: 'commit' });
    return await page.evaluate(
      () =>
        new Promise<{ ms: number; files: string[] }>((done) => {
          const tell = (): void => {
            const loaded = performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname);
            done({ ms: performance.now(), files: loaded });
          };
          const look = (): void => {
            if (document.querySelector('main input, form input') === null) requestAnimationFrame(look);
            else requestAnimationFrame(() => setTimeout(tell, 0));
          };
          look();
        }),
    );
  } finally {
    await context.close();
  }
}

async function followEvening(
  browser: Browser,
  address: string,
  evening: OpenEvening,
  before: readonly string[],
): Promise<{ first: Load; all: Load; shift: number }> {
  const context = await phone(browser);
  try {
    const scales = weigh(context);
    const page = await context.newPage();
    await page.goto(address);
    await page.getByRole('textbox', { name: words.invitation.name }).fill('Guest');
    await page.getByRole('button', { name: words.invitation.sit }).click();
    await page.getByRole('button', { name: words.cautions.accept }).click();
    // In the lobby the page fetches what the evening needs.
    await page.waitForLoadState('networkidle');
    const shift = await worstShift(page, evening);
    return { first: await scales(before), all: await scales(), shift };
  } finally {
    await context.close();
  }
}

/** The host goes through the evening as far as the first talk; only what moves by itself counts. */
async function worstShift(page: Page, { host, cues }: OpenEvening): Promise<number> {
  await page.evaluate(() => {
    const sums = window as unknown as { shifted: number };
    sums.shifted = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        const { value, hadRecentInput } = entry as PerformanceEntry & {
          value: number;
          hadRecentInput: boolean;
        };
        if (!hadRecentInput) sums.shifted += value;
      }
    }).observe({ type: 'layout-shift' });
  });
  let worst = 0;
  for (const cue of cues.slice(0, 20)) {
    await host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue } });
    // A cue takes effect a moment after the tap; then two frames of drawing.
    const shifted = await page.evaluate(
      () =>
        new Promise<number>((done) => {
          setTimeout(
            () =>
              requestAnimationFrame(() =>
                requestAnimationFrame(() => {
                  const sums = window as unknown as { shifted: number };
                  done(sums.shifted);
                  sums.shifted = 0;
                }),
              ),
            600,
          );
        }),
    );
    worst = Math.max(worst, shifted);
  }
  return worst;
}

async function loadHost(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 }, locale: 'en-GB' });
  try {
    const scales = weigh(context);
    const page = await context.newPage();
    await page.goto(address);
    await page.getByRole('heading', { level: 1, name: hostWords.home.title }).waitFor();
    return (await scales()).script;
  } finally {
    await context.close();
  }
}

async function phone(browser: Browser): Promise<BrowserContext> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 640 },
    isMobile: true,
    hasTouch: true,
    locale: 'en-GB',
  });
  // The runner of this command marks functions with their names, and pages do not know how.
  await context.addInitScript({ content: 'globalThis.__name ??= (marked) => marked;' });
  return context;
}
