/**
 * A spreadsheet runs a cell that begins with one of these signs, full-width or not, behind whatever cannot be seen. A
 * cell begins where the value does, and wherever a spreadsheet parts it that guessed another separator than ours or
 * lost count of the quotes: behind a semicolon, a tab or the end of a line. (OWASP, CSV Injection, from memory.)
 */
const sign = /[=+\-@＝＋－＠]/u;
const beginning = /(^|[;\t\r\n])([\s\p{C}"]*)('*)/u;
const likeFormula = new RegExp(`${beginning.source}(?=${sign.source})`, 'gu');
const likeGuarded = new RegExp(`${beginning.source.replace("('*)", "'('*)")}(?=${sign.source})`, 'gu');

/** The text with an apostrophe before each such sign, which makes it text for a spreadsheet. */
export const guarded = (text: string): string => text.replace(likeFormula, "$1$2'$3");

/** What was typed, from what `guarded` wrote. Text that nobody guarded stays as it is, but for such an apostrophe. */
export const unguarded = (text: string): string => text.replace(likeGuarded, '$1$2$3');
