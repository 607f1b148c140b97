import { useEffect, useState } from 'preact/hooks';

/** Long enough to read a page aloud in a low voice. */
const pageStays = 14_000;

export interface PageTurns {
  /** From 0. */
  readonly page: number;
  readonly held: boolean;
}

/**
 * Turns pages by itself, for nobody stands at the screen; the space bar holds them, the arrow keys turn them by hand
 * (WCAG 2.2, 2.2.2). A page that has gone with what was on it leaves the one at its place.
 */
export function usePageTurns(pages: number): PageTurns {
  const [page, setPage] = useState(0);
  const [held, setHeld] = useState(false);
  const now = pages === 0 ? 0 : Math.min(page, pages - 1);
  useEffect(() => {
    if (held || pages < 2) return;
    const timer = setTimeout(() => setPage((now + 1) % pages), pageStays);
    return () => clearTimeout(timer);
  }, [held, pages, now]);
  useEffect(() => {
    const turn = ({ key }: KeyboardEvent): void => {
      if (key === ' ') setHeld((before) => !before);
      if (key === 'ArrowRight' && pages > 0) setPage((now + 1) % pages);
      if (key === 'ArrowLeft' && pages > 0) setPage((now + pages - 1) % pages);
    };
    document.addEventListener('keydown', turn);
    return () => document.removeEventListener('keydown', turn);
  }, [pages, now]);
  return { page: now, held };
}
