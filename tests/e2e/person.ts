import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import axe from 'axe-core';
import type { Browser, BrowserContext, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { cutFeet, footSizes } from '../engines/cut-feet.ts';
import { patience } from '../support/until.ts';
import { faultsWhenMirrored } from './mirrored.ts';
import { keepPicture } from './pictures.ts';
import { writeDownWhatIsTold } from './reading.ts';

const pictures = new URL('../screenshots', import.meta.url).pathname;

export const sizes = {
  tablet: { width: 1024, height: 768 },
  phone: { width: 360, height: 640 },
  small: { width: 320, height: 568 },
  wide: { width: 1280, height: 720 },
} as const;

/** What the browser itself says of a line that is down; the app has no way to keep it quiet. */
const aboutTheLine = /net::ERR_|WebSocket connection to|Failed to load resource/;

/** A page that is left before its socket is open closes it: the browser says so, and nobody has lost anything. */
const leftWhileConnecting =
  /^WebSocket connection to .* WebSocket is closed before the connection is established\.$/;

/** Somebody with a device, as a test sees them: what is on their screen, by role and name, and what goes wrong there. */
export class Person {
  readonly name: string;
  readonly page: Page;
  /** Whether what is wrong with the line is meant to be wrong now. */
  lineMayFail = false;
  readonly faults: string[] = [];
  readonly #context: BrowserContext;

  readonly #options: BrowserContextOptions;

  private constructor(name: string, context: BrowserContext, page: Page, options: BrowserContextOptions) {
    this.name = name;
    this.#options = options;
    this.#context = context;
    this.page = page;
    page.setDefaultTimeout(patience);
    page.on('pageerror', (error) => this.faults.push(`${name}: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() !== 'error' && message.type() !== 'warning') return;
      if (this.lineMayFail && aboutTheLine.test(message.text())) return;
      if (leftWhileConnecting.test(message.text())) return;
      this.faults.push(`${name}: ${message.text()} (${message.location().url})`);
    });
  }

  static async arrives(
    browser: Browser,
    name: string,
    size: keyof typeof sizes,
    theme: 'light' | 'dark' = 'light',
  ): Promise<Person> {
    const options: BrowserContextOptions = {
      viewport: sizes[size],
      colorScheme: theme,
      reducedMotion: 'reduce',
      hasTouch: true,
      isMobile: size === 'phone' || size === 'small',
      acceptDownloads: true,
    };
    const context = await browser.newContext(options);
    await context.addInitScript(writeDownWhatIsTold);
    return new Person(name, context, await context.newPage(), options);
  }

  /**
   * The phone dies and is switched on again: nothing is left but what the browser had written down. Whoever comes back
   * stands before an empty page.
   */
  async diesAndComesBack(browser: Browser): Promise<Person> {
    const storageState = await this.#context.storageState();
    await this.#context.close();
    const context = await browser.newContext({ ...this.#options, storageState });
    await context.addInitScript(writeDownWhatIsTold);
    const back = new Person(this.name, context, await context.newPage(), this.#options);
    back.faults.push(...this.faults);
    return back;
  }

  leaves(): Promise<void> {
    return this.#context.close();
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', { name, exact: typeof name === 'string' });
  }
  field(name: string): Locator {
    return this.page.getByRole('textbox', { name, exact: true });
  }
  heading(name: string, level?: number): Locator {
    return this.page.getByRole('heading', {
      name,
      exact: true,
      ...(level === undefined ? {} : { level }),
    });
  }
  /** A string means exactly these words, so that “Saved” is not found in “not saved yet”. */
  text(words: string | RegExp): Locator {
    return this.page.getByText(words, { exact: typeof words === 'string' });
  }

  /** Whether something wider than the screen makes it slide sideways. */
  overflow(): Promise<number> {
    return this.page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
  }

  /** A picture of the screen for a person to look at. */
  async photograph(screen: string, whole = false): Promise<void> {
    mkdirSync(pictures, { recursive: true });
    const path = join(pictures, `${screen}.png`);
    const png = await this.page.screenshot({ path, animations: 'disabled', fullPage: whole });
    await keepPicture(screen, png, this.page.viewportSize()?.height ?? Number.POSITIVE_INFINITY);
  }

  /** Letters a twelfth wider than those of this machine, as another's fonts may be. */
  widensLetters(): Promise<void> {
    return this.page.evaluate(() => {
      // The policy of the page refuses a style element.
      const sheet = new CSSStyleSheet();
      sheet.replaceSync('* { letter-spacing: 0.04em !important; }');
      document.adoptedStyleSheets = [sheet];
    });
  }

  /**
   * The picture, and for the test what axe-core finds on the screen in a light room and in a dark one, and what a line
   * from right to left would do to it.
   */
  async look(screen: string, { whole = false } = {}): Promise<void> {
    await this.photograph(screen, whole);
    const sideways = await this.overflow();
    if (sideways > 0) this.faults.push(`${screen}: slides sideways by ${sideways} px`);
    for (const found of await this.page.evaluate(faultsWhenMirrored))
      this.faults.push(`${screen}, from right to left: ${found}`);
    for (const found of await this.#barriers()) this.faults.push(`${screen}: ${found}`);
    await this.#lookAtFoot(screen);
    const theirs = await this.page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches);
    await this.page.emulateMedia({ colorScheme: theirs ? 'light' : 'dark' });
    for (const found of await this.#barriers(['color-contrast']))
      this.faults.push(`${screen}, ${theirs ? 'light' : 'dark'}: ${found}`);
    await this.page.emulateMedia({ colorScheme: theirs ? 'dark' : 'light' });
  }

  /** Of an open dialog, at every size that it may have to stand in. */
  async #lookAtFoot(screen: string): Promise<void> {
    const own = this.page.viewportSize();
    if (own === null || (await this.page.locator('dialog[open]').count()) === 0) return;
    for (const size of footSizes) {
      await this.page.setViewportSize(size);
      for (const found of await this.page.evaluate(cutFeet))
        this.faults.push(`${screen} at ${size.width}x${size.height}: ${found}`);
    }
    await this.page.setViewportSize(own);
  }

  /** @param only these rules; absent: every one of WCAG 2.2 AA and what axe-core calls best practice */
  async #barriers(only?: string[]): Promise<string[]> {
    // At its end nothing of a page lies half under the bar that sticks to the foot of the screen.
    const at = await this.page.evaluate(() => {
      const { scrollY } = window;
      window.scrollTo(0, document.documentElement.scrollHeight);
      return scrollY;
    });
    // Run by the debugger and not by the page, whose security policy would refuse it.
    if (!(await this.page.evaluate(() => 'axe' in globalThis))) await this.page.evaluate(axe.source);
    const { violations } = await this.page.evaluate((rules): Promise<axe.AxeResults> => {
      const inPage = (globalThis as unknown as { axe: typeof axe }).axe;
      return inPage.run(document, {
        resultTypes: ['violations'],
        runOnly: rules ?? ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      });
    }, only);
    await this.page.evaluate((top) => window.scrollTo(0, top), at);
    return violations.map(
      ({ id, help, nodes }) =>
        `${id} (${help}) at ${nodes.map((node) => node.html.slice(0, 120)).join(' ; ')}`,
    );
  }
}
