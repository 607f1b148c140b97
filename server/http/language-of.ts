import type { Request } from 'express';

/** The cookie that remembers a choice of language. It is no secret and opens nothing. */
export const languageCookie = 'language';

export interface LanguageOf {
  /** One of those that there are. */
  readonly language: string;
  /** Asked for by this very address, so that it is worth remembering. */
  readonly chosen: boolean;
}

const fallback = 'en';

/**
 * The language of a page: what the address asks for, else what this browser chose before, else what it accepts best (RFC
 * 9110, 12.5.4), else English. Only ever one of those that there are, so that nothing from the request becomes a path.
 *
 * @param languages at least one; BCP 47 tags
 */
export function languageOf(request: Request, languages: readonly string[]): LanguageOf {
  const known = (asked: unknown) => languages.find((each) => each === asked);
  const chosen = known(request.query[languageCookie]);
  if (chosen !== undefined) return { language: chosen, chosen: true };
  const remembered = known(cookieOf(request.headers.cookie));
  if (remembered !== undefined) return { language: remembered, chosen: false };
  // English first: it is what "whatever you have" means.
  const offered = languages.toSorted((one, other) => Number(other === fallback) - Number(one === fallback));
  const accepted = known(request.acceptsLanguages(offered));
  return { language: accepted ?? offered[0] ?? fallback, chosen: false };
}

function cookieOf(header = ''): string | undefined {
  return header
    .split(';')
    .map((each) => each.trim().split('='))
    .find(([name]) => name === languageCookie)?.[1];
}
