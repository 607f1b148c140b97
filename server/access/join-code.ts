import { createHmac } from 'node:crypto';
import type { TastingId } from '../../core/ids.ts';

/**
 * Of every set of characters that look alike only one is used, and the others are read as it: O as 0, I and L as 1,
 * Z as 2, S as 5, B as 8, U as V.
 */
export const codeAlphabet = '0123456789ACDEFGHJKMNPQRTVWXY';

/**
 * At home and in a cellar a code is short: 29^6, 595 million. A server that is reached from elsewhere holds many
 * evenings and anybody may try: 29^9, 14.5 million million. What both are worth is reckoned in `guess-throttle.ts`.
 */
export const codeLengths = { home: 6, elsewhere: 9 } as const;

/** The key of a link, 131 bits: it is never typed, and nobody guesses it. */
const passLength = 27;

const readAs: Readonly<Record<string, string>> = {
  O: '0',
  I: '1',
  L: '1',
  Z: '2',
  S: '5',
  B: '8',
  U: 'V',
};

export interface JoinCode {
  readonly code: string;
  /** The rest of what a link and a QR code carry; absent where the code was typed. */
  readonly pass: string | undefined;
}

/** What was typed or opened, or undefined when it cannot be a code. Case, spaces and dashes do not matter. */
export function readCode(typed: string): JoinCode | undefined {
  const letters = [...typed.toUpperCase().replace(/[\s\p{Pd}]/gu, '')].map((letter) =>
    Object.hasOwn(readAs, letter) ? (readAs[letter] ?? letter) : letter,
  );
  if (!letters.every((letter) => codeAlphabet.includes(letter))) return undefined;
  for (const length of Object.values(codeLengths)) {
    const code = letters.slice(0, length).join('');
    if (letters.length === length) return { code, pass: undefined };
    if (letters.length === length + passLength) return { code, pass: letters.slice(length).join('') };
  }
  return undefined;
}

/** The same for as long as the house key is: nothing of it needs to be kept, and it says nothing of that key. */
export function passOf(tasting: TastingId, houseKey: string): string {
  const bytes = createHmac('sha512', houseKey).update(`invitation ${tasting}`).digest();
  return [...bytes.subarray(0, passLength)].map((byte) => codeAlphabet[byte % codeAlphabet.length]).join('');
}
