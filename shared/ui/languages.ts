/** The languages of this page, as its head lists them: BCP 47 tags. */
export const languagesOfPage = (page: Document): readonly string[] =>
  [...page.head.querySelectorAll<HTMLLinkElement>('link[rel="alternate"][hreflang]')].map(
    ({ hreflang }) => hreflang,
  );

/** As its own speakers call it, such as "Deutsch"; its tag where this device does not know it. */
export function nameOfLanguage(language: string): string {
  const name = ownName(language);
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}

function ownName(language: string): string {
  try {
    return new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? language;
  } catch {
    return language;
  }
}

const aYear = 365 * 24 * 60 * 60;

/** For the server, which picks the page, from now on. @returns whether this browser remembers it */
export function rememberLanguage(language: string, page: Pick<Document, 'cookie'>): boolean {
  try {
    page.cookie = `language=${language}; path=/; max-age=${aYear}; samesite=lax`;
    return page.cookie.split('; ').includes(`language=${language}`);
  } catch {
    return false;
  }
}
