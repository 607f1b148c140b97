import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { momentNow } from './moment.ts';
import { shiftClock } from './shifted-clock.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

const asRoot = process.getuid?.() === 0;

/**
 * A Chromium of this machine: the one that CHROMIUM_PATH names, one on the PATH, or playwright's own. On Debian, as
 * root, it is installed when there is none. Throws a sentence that says what to do when none can be had.
 */
export function findChromium(environment: NodeJS.ProcessEnv = process.env): string {
  const { CHROMIUM_PATH, PATH = '' } = environment;
  if (CHROMIUM_PATH !== undefined && CHROMIUM_PATH !== '') {
    if (existsSync(CHROMIUM_PATH)) return CHROMIUM_PATH;
    throw new Error(
      `CHROMIUM_PATH names ${CHROMIUM_PATH}, and there is no such file: mend it or leave it out.`,
    );
  }
  const folders = [...PATH.split(delimiter), '/usr/bin'];
  const onPath = () => folders.flatMap((folder) => names.map((name) => join(folder, name))).find(existsSync);
  const own = () => (existsSync(chromium.executablePath()) ? chromium.executablePath() : undefined);
  const found = onPath() ?? own();
  if (found !== undefined) return found;
  if (asRoot && existsSync('/etc/debian_version')) installOnDebian();
  const installed = onPath();
  if (installed !== undefined) return installed;
  throw new Error(
    'The browser tests need Chromium: install it (Debian: "apt-get install -y chromium"; elsewhere "npx playwright-core install chromium"), or name one in CHROMIUM_PATH.',
  );
}

function installOnDebian(): void {
  const quiet = { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } } as const;
  try {
    execFileSync('apt-get', ['install', '-y', 'chromium'], quiet);
  } catch {
    try {
      // A fresh machine has no list of packages yet.
      execFileSync('apt-get', ['update'], quiet);
      execFileSync('apt-get', ['install', '-y', 'chromium'], quiet);
    } catch {
      // Said in one sentence by the caller.
    }
  }
}

interface BrowserOptions {
  /** Keeps pages that are left as phones do, so that coming back wakes them; tests mostly do without. */
  readonly pageCache?: boolean;
  /** A camera that draws a clock and a microphone that beeps, which every page may use. */
  readonly fakeMedia?: boolean;
  /** Runs in each page before its own scripts. */
  readonly before?: () => void;
}

function launch({ pageCache = false, fakeMedia = false }: BrowserOptions): Promise<Browser> {
  return chromium.launch({
    ...(pageCache ? { ignoreDefaultArgs: ['--disable-back-forward-cache'] } : {}),
    executablePath: findChromium(),
    args: [
      ...(asRoot ? ['--no-sandbox'] : []),
      '--headless=new',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      ...(fakeMedia
        ? [
            '--use-fake-device-for-media-stream',
            '--use-fake-ui-for-media-stream',
            // Names of the local network are not looked up in a test.
            '--disable-features=WebRtcHideLocalIpsWithMdns',
          ]
        : []),
    ],
  });
}

/** A browser of its own, which ends when it is closed. */
export const openBrowser = async ({ before, ...kind }: BrowserOptions = {}): Promise<Browser> => {
  const browser = await launch(kind);
  return atTheMoment(browser, () => browser.close(), before);
};

/** Of each kind one for all files of tests that share this process: to start one takes a second and more. */
const shared = new Map<string, Promise<Browser>>();

/** The same, but to close it closes only what was opened in it: the browser itself serves the next file of tests. */
export async function lendBrowser({ before, ...kind }: BrowserOptions = {}): Promise<Browser> {
  const name = JSON.stringify(kind);
  let browser = await shared.get(name);
  if (browser?.isConnected() !== true) {
    const launched = launch(kind);
    shared.set(name, launched);
    browser = await launched;
  }
  return atTheMoment(browser, () => Promise.resolve(), before);
}

/**
 * Every page in it lives at the moment of this run: clock, zone and locale are those of the servers that the tests start,
 * unless a context asks for another locale.
 */
function atTheMoment(browser: Browser, close: () => Promise<void>, before?: () => void): Browser {
  const moment = momentNow();
  const opened: BrowserContext[] = [];
  const own = Object.create(browser) as Browser;
  own.newContext = async (options) => {
    const here = moment === undefined ? {} : { locale: moment.locale, timezoneId: moment.zone };
    const context = await browser.newContext({ ...here, ...options });
    opened.push(context);
    if (moment !== undefined) await context.addInitScript(shiftClock, Number(process.env.CLOCK_SHIFT));
    if (before !== undefined) await context.addInitScript(before);
    return context;
  };
  own.newPage = async (options) => (await own.newContext(options)).newPage();
  own.close = async () => {
    for (const context of opened.splice(0)) await context.close();
    await close();
  };
  return own;
}
