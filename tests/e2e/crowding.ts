import type { Page } from 'playwright-core';

/**
 * What the eye trips over on a screen: controls or words that lie on each other, words that are cut off without a
 * sign, broken in the middle or leave what they stand in, things that stick out at the sides. Each as a sentence; none is as it should be.
 */
export function crowding(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    /** Rounding of the layout shows as a pixel or so. */
    const slack = 1.5;
    const wide = document.documentElement.clientWidth;
    const faults = new Set<string>();
    const scope = document.querySelector('dialog[open]') ?? document.body;
    const nameOf = (element: Element): string => {
      const words = element.getAttribute('aria-label') ?? element.textContent ?? '';
      return `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} “${words.trim().slice(0, 40)}”`;
    };
    const isSeen = (element: Element): boolean =>
      element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) &&
      element.closest('.visually-hidden, [aria-hidden="true"], svg') === null;

    interface Shown {
      readonly element: Element;
      /** One for each line of what runs on in lines. */
      readonly boxes: readonly DOMRect[];
      /** What sticks to an edge of the screen lies over the page by design. */
      readonly layer: Element | null;
    }
    /** As much of it as its scrolling boxes let through. */
    const shown = (element: Element): Shown => {
      let layer: Element | null = null;
      const edges: DOMRect[] = [];
      for (let box: Element | null = element; box !== null; box = box.parentElement) {
        const { overflow, position } = getComputedStyle(box);
        if (box !== element && overflow !== 'visible') edges.push(box.getBoundingClientRect());
        if (position === 'fixed' || position === 'sticky') layer ??= box;
      }
      const boxes = [...element.getClientRects()].flatMap((rect) => {
        let { left, top, right, bottom } = rect;
        for (const edge of edges) {
          [left, right] = [Math.max(left, edge.left), Math.min(right, edge.right)];
          [top, bottom] = [Math.max(top, edge.top), Math.min(bottom, edge.bottom)];
        }
        return right > left && bottom > top ? [new DOMRect(left, top, right - left, bottom - top)] : [];
      });
      return { element, boxes, layer };
    };
    const meet = (one: Shown, other: Shown, across: number, down: number): boolean =>
      one.layer === other.layer &&
      !one.element.contains(other.element) &&
      one.boxes.some((a) =>
        other.boxes.some(
          (b) =>
            Math.min(a.right, b.right) - Math.max(a.left, b.left) > across &&
            Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > down,
        ),
      );
    const pairs = (kind: readonly Shown[], across: number, down: number): void => {
      for (const [index, one] of kind.entries())
        for (const other of kind.slice(index + 1))
          if (meet(one, other, across, down))
            faults.add(`${nameOf(one.element)} lies on ${nameOf(other.element)}`);
    };

    const all = [...scope.querySelectorAll<HTMLElement>('*')].filter(isSeen);
    pairs(
      all.filter((each) => each.matches('button, a[href], input, textarea, select')).map(shown),
      slack,
      slack,
    );
    const written = all.filter((each) =>
      [...each.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '',
      ),
    );
    // Lines are set closer than their letters are high, and a large one reaches into the air of a small one.
    pairs(written.filter((each) => each.children.length === 0).map(shown), 4, 7);
    /** Longer words than this may break in a narrow place. */
    const shortWord = 10;
    const broken = (element: Element): string | undefined => {
      // What somebody is called may fill a narrow line.
      if (element.matches('bdi')) return undefined;
      for (const node of element.childNodes) {
        if (node.nodeType !== Node.TEXT_NODE) continue;
        for (const word of (node.textContent ?? '').matchAll(/\p{L}+/gu)) {
          if (word[0].length > shortWord) continue;
          const range = document.createRange();
          range.setStart(node, word.index);
          range.setEnd(node, word.index + word[0].length);
          const [first, ...others] = range.getClientRects();
          if (first && others.some(({ top }) => top > first.bottom - slack)) return word[0];
        }
      }
      return undefined;
    };
    for (const element of written) {
      const word = broken(element);
      if (word !== undefined) faults.add(`“${word}” is broken in ${nameOf(element)}`);
      const box = element.getBoundingClientRect();
      if (box.width === 0) continue;
      const style = getComputedStyle(element);
      const signed = style.textOverflow === 'ellipsis' || style.webkitLineClamp !== 'none';
      const more = element.scrollWidth - element.clientWidth;
      if (style.overflow === 'hidden' && !signed && more > slack)
        faults.add(`${nameOf(element)} is cut off by ${more} px`);
      if (box.right > wide + slack || box.left < -slack)
        faults.add(`${nameOf(element)} sticks out at the side (${box.left} to ${box.right})`);
      const control = element.closest('button, a.button, .seat');
      if (control === element && more > slack) faults.add(`${nameOf(element)} is too narrow for its words`);
      if (control === null || control === element) continue;
      const edge = control.getBoundingClientRect();
      const inside =
        box.left >= edge.left - slack && box.right <= edge.right + slack && box.bottom <= edge.bottom + slack;
      if (!inside) faults.add(`${nameOf(element)} leaves ${nameOf(control)}`);
    }
    return [...faults];
  });
}
