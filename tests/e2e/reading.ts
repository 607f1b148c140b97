import type { Page } from 'playwright-core';

/** What somebody who listens is told of a screen: from the browser's own accessibility tree. */
export interface Heard {
  readonly headings: readonly { readonly level: number; readonly name: string }[];
  readonly liveRegions: readonly { readonly manner: string; readonly text: string }[];
  readonly landmarks: readonly string[];
  readonly everything: string;
}

interface AxNode {
  readonly nodeId: string;
  readonly ignored: boolean;
  readonly role?: { readonly value?: unknown };
  readonly name?: { readonly value?: unknown };
  readonly properties?: readonly { readonly name: string; readonly value: { readonly value?: unknown } }[];
  readonly childIds?: readonly string[];
}

export async function heard(page: Page): Promise<Heard> {
  const session = await page.context().newCDPSession(page);
  const tree = (await session.send('Accessibility.getFullAXTree')) as { readonly nodes: readonly AxNode[] };
  await session.detach();
  const byId = new Map(tree.nodes.map((node) => [node.nodeId, node]));
  const text = (node: AxNode): string => {
    if (!node.ignored && node.role?.value === 'StaticText') return String(node.name?.value ?? '');
    return (node.childIds ?? []).map((id) => textOf(id)).join(' ');
  };
  const textOf = (id: string): string => {
    const node = byId.get(id);
    return node === undefined ? '' : text(node);
  };
  const property = (node: AxNode, name: string): unknown =>
    node.properties?.find((each) => each.name === name)?.value.value;
  const shown = tree.nodes.filter(({ ignored }) => !ignored);
  const roles = (role: string) => shown.filter((node) => node.role?.value === role);
  return {
    headings: roles('heading').map((node) => ({
      level: Number(property(node, 'level')),
      name: String(node.name?.value ?? ''),
    })),
    // Whatever stands in a live region carries its manner too; the region is the one that says so of itself.
    liveRegions: ['status', 'alert', 'log'].flatMap(roles).map((node) => ({
      manner: String(property(node, 'live')),
      text: text(node),
    })),
    landmarks: ['main', 'banner', 'contentinfo', 'navigation'].filter((role) => roles(role).length > 0),
    everything: tree.nodes[0] === undefined ? '' : text(tree.nodes[0]),
  };
}

/**
 * To be sent into a page: writes down all that its live region says. On a busy machine the next message, such as the time
 * that is left, comes before a test has looked.
 */
export function writeDownWhatIsTold(): void {
  const told: string[] = [];
  Object.assign(window, { told });
  new MutationObserver(() => {
    const text = document.querySelector('output[aria-live]')?.textContent ?? '';
    if (text !== '' && text !== told.at(-1)) told.push(text);
  }).observe(document, { subtree: true, childList: true, characterData: true });
}

/** Waits for the message that holds these words, and forgets it with all that came before. */
export async function toldOf(page: Page, words: string): Promise<string> {
  const message = await page.waitForFunction((sought) => {
    const { told = [] } = window as { told?: string[] };
    return told.find((each) => each.includes(sought));
  }, words);
  const text = String(await message.jsonValue());
  await page.evaluate((heard) => {
    const { told = [] } = window as { told?: string[] };
    told.splice(0, told.indexOf(heard) + 1);
  }, text);
  return text;
}

/**
 * Where the order in which things are read out is not the order in which the eye meets them: downwards, and along a
 * line in the direction of the script. What sticks to an edge of the screen is met on its own.
 */
export function readingOrder(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const sticks = (element: Element): boolean => {
      for (let box: Element | null = element; box !== null; box = box.parentElement)
        if (['fixed', 'sticky'].includes(getComputedStyle(box).position)) return true;
      return false;
    };
    const letters = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const blocks: { readonly words: string; readonly first: DOMRect }[] = [];
    for (let node = letters.nextNode(); node !== null; node = letters.nextNode()) {
      const words = (node.textContent ?? '').trim();
      const element = node.parentElement;
      if (words === '' || element === null) continue;
      const unseen =
        element.closest('.visually-hidden, [aria-hidden="true"], svg, noscript, script') !== null;
      if (unseen || !element.checkVisibility({ visibilityProperty: true }) || sticks(element)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const [first] = range.getClientRects();
      if (first !== undefined && first.width > 0) blocks.push({ words, first });
    }
    const rtl = getComputedStyle(document.body).direction === 'rtl';
    return blocks.slice(1).flatMap(({ words, first }, index) => {
      const before = blocks[index];
      if (before === undefined) return [];
      const below = first.top >= before.first.bottom - 4;
      const sameLine = first.bottom > before.first.top && first.top < before.first.bottom;
      const along = rtl ? first.right <= before.first.left + 4 : first.left >= before.first.right - 4;
      // A short column beside a tall one: the next begins at its head.
      const beside = along && first.top < before.first.bottom;
      return below || (sameLine && along) || beside
        ? []
        : [
            `“${words.slice(0, 40)}” is read after “${before.words.slice(0, 40)}” but does not stand after it`,
          ];
    });
  });
}
