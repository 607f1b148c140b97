/**
 * A word that stands in one note and nowhere else. It begins and ends with a mark of its own, so that either half of
 * one that was split over two messages is still recognised.
 */
export interface Canary {
  readonly text: string;
  /** Counts from 0. */
  readonly number: number;
}

const head = 'qzxvjk';
const tail = 'wvzhqx';
const digits = 7;

export const canary = (number: number): Canary => ({
  text: `${head}${String(number).padStart(digits, '0')}${tail}`,
  number,
});

const whole = new RegExp(`${head}(\\d{${digits}})${tail}`, 'g');

export interface Hit {
  /** In which dress it was found. */
  readonly as: string;
  /** Which note, where the whole word could be read. */
  readonly number: number | undefined;
}

/**
 * Looks for canaries in anything that another device can see. Those that `allowed` names are no hit where they stand
 * whole and plain; in any other dress nothing is allowed.
 */
export function canariesIn(text: string, allowed: (number: number) => boolean = () => false): Hit[] {
  const hits: Hit[] = [];
  const rest = text.replace(whole, (_word, number: string) => {
    if (!allowed(Number(number))) hits.push({ as: 'plain', number: Number(number) });
    return '';
  });
  for (const [as, pattern] of dresses) if (pattern.test(rest)) hits.push({ as, number: undefined });
  return hits;
}

const either = (dress: (mark: string) => readonly string[]): RegExp =>
  new RegExp([head, tail].flatMap(dress).join('|'), 'i');
const codesOf = (mark: string, dress: (code: number) => string): string =>
  [...mark].map((letter) => dress(letter.charCodeAt(0))).join('');
const hex = (code: number): string => code.toString(16).padStart(2, '0');

/** Base64 of a text that holds the mark: its letters fall in one of three ways, and the ends depend on neighbours. */
function base64Of(mark: string): string[] {
  return [0, 1, 2].map((before) => {
    const encoded = Buffer.from('\0'.repeat(before) + mark).toString('base64');
    const first = Math.ceil((before * 8) / 6);
    const last = Math.floor(((before + mark.length) * 8) / 6);
    return encoded.slice(first, last).replaceAll('+', '[+-]').replaceAll('/', '[/_]');
  });
}

const dresses: readonly (readonly [string, RegExp])[] = [
  ['part of one', either((mark) => [mark])],
  ['backwards', either((mark) => [[...mark].reverse().join('')])],
  ['base64', either(base64Of)],
  ['hex', either((mark) => [codesOf(mark, hex)])],
  ['URL-encoded', either((mark) => [codesOf(mark, (code) => `%${hex(code)}`)])],
  ['escaped', either((mark) => [codesOf(mark, (code) => `\\\\+u00${hex(code)}`)])],
  ['letter by letter', either((mark) => [[...mark].join('[^a-z0-9]{1,3}')])],
];
