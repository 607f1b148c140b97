/**
 * What has the focus may leave the page: a button that was pressed and is done with, a whole page behind a link. A
 * browser then puts the focus nowhere, and whoever works with keys or listens begins again at the top. Here it goes to
 * the heading of what the lost one stood in, or of the page that has come. A focus that somebody put elsewhere is left.
 * What comes in above it must not push it under the foot of the page either: it was in sight and comes back into sight.
 */
export function keepFocus(root: HTMLElement): void {
  /** What has the focus, and what it stands in, innermost first. */
  let held: readonly Element[] = [];
  /** How far below the beginning of the page what has the focus stood when last looked at, in px. */
  let stood = 0;
  /** Whether it was in sight then; somebody may have moved the page on. A change above it may have moved the page already. */
  let seen = false;
  let looking = false;
  root.addEventListener('focusin', ({ target }) => {
    held = target instanceof Element ? withAncestors(target, root) : [];
    stood = placeOf(held[0]);
    // Wherever it stands, the browser brings it into sight.
    seen = true;
  });
  addEventListener('scroll', look, { passive: true });
  root.addEventListener('focusout', ({ target }) => {
    // Browsers say so too of what is just being taken out; only afterwards one knows who put the focus away.
    setTimeout(() => {
      if (target === held[0] && held[0] !== undefined && isThere(held[0])) held = [];
    });
  });
  /** Once for each picture: asked after each change, the browser would lay the page out each time. */
  function look(): void {
    if (!looking) requestAnimationFrame(keepInSight);
    looking = true;
  }
  function keepInSight(): void {
    looking = false;
    const [now] = held;
    if (now === undefined || !isThere(now)) return;
    const stands = placeOf(now);
    if (seen && stands !== stood && now.matches(':focus-visible')) now.scrollIntoView({ block: 'nearest' });
    stood = stands;
    seen = stands > scrollY && stands < scrollY + innerHeight;
  }
  new MutationObserver(() => {
    const [lost] = held;
    if (lost === undefined) return;
    if (isThere(lost)) return look();
    const { activeElement } = document;
    if (activeElement !== null && activeElement !== document.body && activeElement !== lost) return;
    // A page that is still being fetched has no heading yet: it is asked again with the next change.
    const heading = held
      .filter((element) => element.isConnected)
      .map((element) => element.querySelector<HTMLElement>('h1, h2, h3'))
      .find((element) => element !== null);
    if (heading === undefined || heading === null) return;
    if (!heading.hasAttribute('tabindex')) heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
  }).observe(root, { childList: true, subtree: true, attributeFilter: ['disabled'] });
}

const placeOf = (element: Element | undefined): number =>
  element === undefined ? 0 : element.getBoundingClientRect().top + scrollY;

const isThere = (element: Element): boolean => element.isConnected && !element.matches(':disabled');

function withAncestors(element: Element, root: Element): Element[] {
  const found: Element[] = [];
  for (let each: Element | null = element; each !== null; each = each.parentElement) {
    found.push(each);
    if (each === root) break;
  }
  return found;
}
