import type { PageMarks, PermittedPage } from './permitted-page.ts';

const isOwn = (code: string): boolean => code.startsWith('own:');

/**
 * An own word is a sentence in small: how somebody puts it can tell who they are. Of an anonymous page it is kept
 * only where a guest who shares with a name, or the host's own additions, have the same.
 */
export function hideOwnWords(
  pages: readonly PermittedPage[],
  extraWords: readonly string[],
): PermittedPage[] {
  const told = new Set([
    ...extraWords.map((word) => `own:${word.normalize('NFC').toLowerCase()}`),
    ...pages.flatMap(({ consents, sealed, current }) =>
      consents.words === 'shared' ? [...sealed.words, ...current.words].filter(isOwn) : [],
    ),
  ]);
  const kept = (marks: PageMarks): PageMarks => ({
    ...marks,
    words: marks.words.filter((word) => !isOwn(word) || told.has(word)),
  });
  return pages.map((page) =>
    page.consents.words === 'shared'
      ? page
      : { ...page, sealed: kept(page.sealed), current: kept(page.current) },
  );
}
