/**
 * What people type, made safe to show beside other people's words: no control characters, no bidirectional
 * overrides that would turn a neighbour's text around, no lone surrogates (they cannot be stored as UTF-8).
 */
const invisible = /(?![\n\t])[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069\uFEFF]/gu;

/** Text of several lines: line ends become \n, everything else that cannot be seen goes. */
export const cleanText = (typed: string): string =>
  typed.replace(/\r\n?/g, '\n').replace(invisible, '').normalize('NFC');

/** One line: as `cleanText`, with every run of white space as one space and none at the ends. */
export const cleanLine = (typed: string): string => cleanText(typed).replace(/\s+/g, ' ').trim();
