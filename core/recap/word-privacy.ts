import type { PageMarks, PermittedPage } from './permitted-page.ts';

const isOwn = (code: string): boolean => code.startsWith('own:');
const keyOf = (code: string): string => code.toLowerCase();

/**
 * An own word is a sentence in small: how somebody puts it can tell who they are. Of an anonymous page it is kept
 * only where a guest who shares with a name, or the host's own additions, have the same; capitals make no other word of
 * it, and it is spelled as the host or the first of those guests did.
 */
export function hideOwnWords(
  pages: readonly PermittedPage[],
  extraWords: readonly string[],
): PermittedPage[] {
  const told = [
    ...extraWords.map((word) => `own:${word.normalize('NFC')}`),
    ...pages.flatMap(({ consents, sealed, current }) =>
      consents.words === 'shared' ? [...sealed.words, ...current.words].filter(isOwn) : [],
    ),
  ];
  const spellings = new Map(told.toReversed().map((code) => [keyOf(code), code]));
  const kept = (marks: PageMarks): PageMarks => ({
    ...marks,
    words: [
      ...new Set(marks.words.flatMap((word) => (isOwn(word) ? (spellings.get(keyOf(word)) ?? []) : word))),
    ],
  });
  return pages.map((page) => ({ ...page, sealed: kept(page.sealed), current: kept(page.current) }));
}
