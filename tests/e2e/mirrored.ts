/**
 * What goes wrong on a page once its lines run from right to left, and only then: what slides sideways, what sticks out
 * of the screen, and what lies over something else. Runs in the page, in one go, so that nothing of it is ever drawn.
 */
export function faultsWhenMirrored(): string[] {
  interface Block {
    readonly name: string;
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
    /** Scrolled within a part of the page, or fixed above it: it may lie beyond the edge, or over what is below. */
    readonly apart: boolean;
  }
  const page = document.documentElement;

  const isApart = (element: Element): boolean => {
    for (
      let each: Element | null = element;
      each !== null && each !== document.body;
      each = each.parentElement
    ) {
      const { position, overflowX } = getComputedStyle(each);
      if (position === 'fixed' || position === 'sticky' || overflowX !== 'visible') return true;
    }
    return false;
  };
  const blockAround = (element: Element): Element => {
    let each = element;
    while (getComputedStyle(each).display.startsWith('inline') && each.parentElement !== null)
      each = each.parentElement;
    return each;
  };

  /** Where the words of each block stand. */
  function blocks(): Block[] {
    const rects = new Map<Element, DOMRect[]>();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
      const parent = text.parentElement;
      if (parent === null || text.textContent?.trim() === '' || parent.closest('svg, noscript, script'))
        continue;
      if (!parent.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const seen = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
      // Words for screen readers only are put into a single pixel.
      const { width } = parent.getBoundingClientRect();
      if (seen.length === 0 || width <= 1) continue;
      const block = blockAround(parent);
      rects.set(block, [...(rects.get(block) ?? []), ...seen]);
    }
    return [...rects].map(([block, seen]) => ({
      name: `${block.tagName.toLowerCase()} “${(block.textContent ?? '').trim().slice(0, 40)}”`,
      left: Math.min(...seen.map(({ left }) => left)),
      right: Math.max(...seen.map(({ right }) => right)),
      top: Math.min(...seen.map(({ top }) => top)),
      bottom: Math.max(...seen.map(({ bottom }) => bottom)),
      apart: isApart(block),
    }));
  }

  function faults(): Set<string> {
    const found = new Set<string>();
    if (page.scrollWidth > page.clientWidth) found.add('slides sideways');
    const all = blocks();
    for (const [index, one] of all.entries()) {
      if (one.apart) continue;
      if (one.left < -1 || one.right > page.clientWidth + 1)
        found.add(`${one.name} sticks out of the screen`);
      for (const other of all.slice(index + 1)) {
        if (other.apart) continue;
        const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
        if (across > 1 && down > 1) found.add(`${one.name} lies over ${other.name}`);
      }
    }
    return found;
  }

  const usual = faults();
  const before = page.dir;
  page.dir = 'rtl';
  const mirrored = faults();
  page.dir = before;
  return [...mirrored].filter((each) => !usual.has(each));
}
