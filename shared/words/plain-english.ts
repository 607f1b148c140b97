/**
 * The text of codes that were made of English words: hyphens become spaces, and what reads better otherwise is
 * said apart. It saves a phone from fetching every word twice; other languages list all of them.
 */
export function plainEnglish<Code extends string>(
  codes: readonly Code[],
  apart: Readonly<Partial<Record<NoInfer<Code>, string>>>,
): Readonly<Record<Code, string>> {
  const said = codes.map((code) => [code, apart[code] ?? code.replaceAll('-', ' ')]);
  return Object.fromEntries(said) as Record<Code, string>;
}
