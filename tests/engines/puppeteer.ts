import puppeteer, {
  type Browser,
  type LaunchOptions,
  type Page,
  type SerializedAXNode,
} from 'puppeteer-core';
import { findChromium } from '../support/browser.ts';
import { momentNow } from '../support/moment.ts';
import type { Device, Exposed, Sheet, Size } from './device.ts';
import { inPage } from './in-page.ts';
import { programOf } from './installed.ts';
import { missingIn } from './told.ts';

interface PrintingDevice extends Device {
  /** As the print window makes it, with no margins but the page's own: PDF. */
  print(sheet: Sheet): Promise<Buffer>;
}

interface FirefoxOptions {
  /** The environment of a display with a window for it; absent: it has none. */
  readonly world?: NodeJS.ProcessEnv;
  /** A camera and a microphone that it makes up, which every page may use, and addresses that this machine alone knows. */
  readonly fakeMedia?: boolean;
  /** Runs in each page before its own scripts. */
  readonly before?: () => void;
}

/** A Firefox of its own, spoken to by WebDriver BiDi. */
export const openFirefox = (
  size: Size,
  dark = false,
  { world, fakeMedia = false, before }: FirefoxOptions = {},
): Promise<PrintingDevice> =>
  openDevice(
    'firefox',
    size,
    {
      ...(world === undefined ? {} : { headless: false, env: world }),
      browser: 'firefox',
      executablePath: programOf('firefox-esr|firefox') ?? '',
      // The tree for assistive technology is the browser's, not the page's.
      args: ['--remote-allow-system-access'],
      extraPrefsFirefox: {
        'intl.accept_languages': momentNow()?.locale ?? 'en-GB',
        'layout.css.prefers-color-scheme.content-override': dark ? 0 : 1,
        'media.autoplay.default': 0,
        ...(fakeMedia
          ? {
              'media.navigator.streams.fake': true,
              'media.navigator.permission.disabled': true,
              'media.peerconnection.ice.loopback': true,
              // Names of the local network are not looked up in a test.
              'media.peerconnection.ice.obfuscate_host_addresses': false,
            }
          : {}),
      },
    },
    before,
  );

/** A Chromium of its own, held in the same way. */
export const openChromium = (size: Size, dark = false): Promise<Device> =>
  openDevice('chromium', size, {
    executablePath: findChromium(),
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      `--lang=${momentNow()?.locale ?? 'en-GB'}`,
      `--blink-settings=preferredColorScheme=${dark ? 0 : 1}`,
    ],
  });

async function openDevice(
  engine: 'chromium' | 'firefox',
  size: Size,
  launch: LaunchOptions,
  before?: () => void,
): Promise<PrintingDevice> {
  const browser = await puppeteer.launch({ headless: true, ...launch });
  // The first tab of a window that nobody looks at never gets the focus.
  const page = await browser.newPage();
  await page.setViewport(size);
  if (before !== undefined) await page.evaluateOnNewDocument(inPage(before));
  return {
    engine,
    open: async (address) => {
      await page.goto(address, { waitUntil: 'load' });
    },
    read: <Value>(expression: string) => page.evaluate(expression) as Promise<Value>,
    press: (x, y) => page.mouse.click(x, y),
    async drag([first, ...others]) {
      if (first === undefined) return;
      await page.mouse.move(first.x, first.y);
      await page.mouse.down();
      for (const { x, y } of others) await page.mouse.move(x, y, { steps: 4 });
      await page.mouse.up();
    },
    type: (text) => page.keyboard.type(text),
    key: (name) => page.keyboard.press(name),
    toldOtherwise: async (reckoned) =>
      missingIn(await (engine === 'firefox' ? treeOfFirefox(browser) : treeOfChromium(page)), reckoned),
    resize: (wanted) => page.setViewport(wanted),
    picture: async () => Buffer.from(await page.screenshot()),
    print: async ({ paper, lying }) =>
      Buffer.from(await page.pdf({ format: paper, landscape: lying, printBackground: true })),
    close: () => browser.close(),
  };
}

async function treeOfChromium(page: Page): Promise<Exposed[]> {
  const flat = ({ role, name = '', children = [] }: SerializedAXNode): Exposed[] => [
    { role, name },
    ...children.flatMap(flat),
  ];
  const root = await page.accessibility.snapshot({ interestingOnly: false });
  return root === null ? [] : flat(root);
}

/** As much of puppeteer's line to Firefox as is needed here: it passes on no command for the browser's own window. */
interface Line {
  readonly connection: {
    send(method: string, params: object): Promise<{ readonly result: unknown }>;
  };
}

/** Runs in the browser's own window: what every screen reader is given, from the page in front downwards. */
const walkOfFirefox = `(() => {
  const service = Cc['@mozilla.org/accessibilityService;1'].getService(Ci.nsIAccessibilityService);
  const found = [];
  const walk = (each) => {
    found.push({ role: service.getStringRole(each.role), name: each.name ?? '' });
    for (let child = each.firstChild; child; child = child.nextSibling) walk(child);
  };
  const page = service.getAccessibleFor(gBrowser.selectedBrowser);
  // The service begins with the first question, and has no page yet.
  if (page) walk(page);
  return JSON.stringify(found);
})()`;

async function treeOfFirefox(browser: Browser): Promise<Exposed[]> {
  const { connection } = browser as unknown as Line;
  const windows = await connection.send('browsingContext.getTree', { 'moz:scope': 'chrome' });
  const { contexts } = windows.result as { readonly contexts: readonly { readonly context: string }[] };
  const look = async () => {
    const answer = await connection.send('script.evaluate', {
      target: { context: contexts[0]?.context },
      awaitPromise: false,
      expression: walkOfFirefox,
    });
    const { result } = answer.result as { readonly result: { readonly value: string } };
    return JSON.parse(result.value) as Exposed[];
  };
  // The browser is told of a page by the page's process, a moment after it was drawn.
  let before = -1;
  for (;;) {
    const tree = await look();
    if (tree.length === before && tree.length > 2) return tree;
    before = tree.length;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}
