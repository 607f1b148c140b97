import { useLayoutEffect, useRef } from 'preact/hooks';

/** So long after a press elsewhere on the page what moves is what the press has asked for, in ms. */
const ownDoingMs = 700;

/**
 * Holds a part of the page where the eye has it while what stands above it grows or shrinks by itself, so that a finger
 * lands on what it aimed at. Browsers do that only on a page that has been scrolled, and WebKit never.
 * @param holds not while something above asks to be looked at first
 */
export function useHeldInPlace(holds: boolean) {
  const held = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const part = held.current;
    const page = part?.closest('main');
    if (!holds || part === null || !page) return;
    let top = part.getBoundingClientRect().top;
    let letGoUntil = 0;
    const remember = (): void => {
      top = part.getBoundingClientRect().top;
    };
    const hold = (): void => {
      const { top: now, bottom } = part.getBoundingClientRect();
      const moved = now - top;
      const seen = top < window.innerHeight && bottom - moved > 0;
      if (seen && moved !== 0 && performance.now() > letGoUntil) {
        // A page that was short has to be long enough to be scrolled so far.
        if (moved > 0) part.style.minBlockSize = `${window.innerHeight - top}px`;
        window.scrollBy(0, moved);
      }
      remember();
    };
    const press = ({ target }: Event): void => {
      if (!(target instanceof Node && part.contains(target))) letGoUntil = performance.now() + ownDoingMs;
    };
    const sizes = new ResizeObserver(hold);
    for (const each of [document.body, page]) sizes.observe(each);
    window.addEventListener('scroll', remember, { passive: true });
    page.addEventListener('click', press);
    return () => {
      sizes.disconnect();
      window.removeEventListener('scroll', remember);
      page.removeEventListener('click', press);
    };
  }, [holds]);
  return held;
}
