import { patience } from '../support/until.ts';
import { brokenWords } from './cut-off.ts';
import type { Device } from './device.ts';
import { inPage } from './in-page.ts';

type Kind = 'button' | 'primary' | 'link' | 'heading' | 'field' | 'choice' | 'radio' | 'switch' | 'text';

const selectors: Readonly<Record<Kind, string>> = {
  button: 'button, [role=button], summary',
  /** The one big button of a host. */
  primary: 'button:has(.big-lines)',
  link: 'a[href]',
  heading: 'h1, h2, h3',
  field: 'input, textarea',
  choice: 'legend',
  radio: 'input[type=radio], [role=radio]',
  switch: '[role=switch], input[type=checkbox]',
  text: 'p, li, span, strong, div, dd, dt, h1, h2, h3, label',
};

/** Where the middle of something lies in the viewport, and whether it can be pressed there. */
interface Found {
  readonly x: number;
  readonly y: number;
  readonly free: boolean;
}

/** Runs in the page: the first thing of a kind with this name that is shown, brought into sight if asked. */
function findInPage(selector: string, source: string, scroll: boolean): Found | null {
  const name = new RegExp(source, 'u');
  const tidy = (text: string): string => text.replace(/\s+/gu, ' ').trim();
  const called = (element: Element): string[] => {
    const { labels } = element as HTMLInputElement;
    return [
      element.getAttribute('aria-label') ?? '',
      ...[...(labels ?? [])].map(({ textContent }) => textContent ?? ''),
      element.textContent ?? '',
    ].map(tidy);
  };
  const dialog = document.querySelector('dialog[open], [role=dialog]');
  const within = [...(dialog ?? document).querySelectorAll(selector)];
  const found = within.find((element) => {
    if (!called(element).some((each) => name.test(each))) return false;
    const shown = (element as HTMLInputElement).labels?.[0] ?? element;
    return shown.getClientRects().length > 0;
  });
  if (found === undefined) return null;
  const box = (): DOMRect => {
    const own = found.getBoundingClientRect();
    const label = (found as HTMLInputElement).labels?.[0];
    return own.width > 1 || label === undefined ? own : label.getBoundingClientRect();
  };
  if (scroll && (box().top < 0 || box().bottom > innerHeight)) found.scrollIntoView({ block: 'center' });
  const { left, top, width, height } = box();
  const [x, y] = [left + width / 2, top + height / 2];
  const on = document.elementFromPoint(x, y);
  const label = (found as HTMLInputElement).labels?.[0];
  const free =
    !(found as HTMLButtonElement).disabled &&
    found.getAttribute('aria-disabled') !== 'true' &&
    on !== null &&
    (found.contains(on) || on.contains(found) || label?.contains(on) === true);
  return { x, y, free };
}

/** Somebody who uses a page of any engine as they find it: by the words on the screen, with pointer and keys. */
export class Visitor {
  readonly device: Device;

  constructor(device: Device) {
    this.device = device;
  }

  /** Waits until something of this kind and name is shown; answers where. */
  async sees(kind: Kind, name: string | RegExp, scroll = false): Promise<Found> {
    const giveUpAt = performance.now() + patience;
    const source = name instanceof RegExp ? name.source : `^${escaped(name)}`;
    const expression = inPage(findInPage, selectors[kind], source, scroll);
    for (;;) {
      const found = await this.device.read<Found | null>(expression);
      if (found !== null && (!scroll || found.free)) return found;
      if (performance.now() > giveUpAt) {
        const shown = await this.device.read<string>('document.body.innerText');
        throw new Error(
          `${this.device.engine}: there is no ${kind} “${name}”${found === null ? '' : ' that can be pressed'}. The page says: ${shown.slice(0, 1500)}`,
        );
      }
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }

  async presses(kind: Kind, name: string | RegExp): Promise<void> {
    let { x, y } = await this.sees(kind, name, true);
    // A page that is still coming in moves: nobody presses where a button stood a moment ago.
    for (let moves = true; moves; ) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      const now = await this.sees(kind, name, true);
      moves = now.x !== x || now.y !== y;
      ({ x, y } = now);
    }
    await this.device.press(x, y);
  }

  async types(field: string | RegExp, text: string): Promise<void> {
    await this.presses('field', field);
    await this.device.type(text);
  }

  /** What does not fit into this screen, each as a sentence. */
  async cutOff(): Promise<string[]> {
    const by = await this.device.read<number>('document.documentElement.scrollWidth - innerWidth');
    return [
      ...(by > 0 ? [`the page slides sideways by ${by} px`] : []),
      ...(await this.device.read<string[]>(inPage(brokenWords))),
    ];
  }

  /** Waits until the page says the same for a while, and nothing in it is under way. */
  async calms(): Promise<void> {
    const now = () =>
      this.device.read<string>(
        'document.body.innerText + document.getAnimations().some(({ playState }) => playState === "running")',
      );
    const giveUpAt = performance.now() + 5000;
    for (let before = '', same = 0; same < 2 && performance.now() < giveUpAt; ) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      const said = await now();
      same = said === before ? same + 1 : 0;
      before = said;
    }
  }

  says(): Promise<string> {
    return this.device.read<string>('document.body.innerText');
  }
}

const escaped = (name: string): string =>
  name.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&').replaceAll(/\s/g, '\\s');
