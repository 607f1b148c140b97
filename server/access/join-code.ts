/**
 * Of every set of characters that look alike only one is used, and the others are read as it: O as 0, I and L as 1,
 * Z as 2, S as 5, B as 8, U as V. 29^6 is about 595 million codes.
 */
export const codeAlphabet = '0123456789ACDEFGHJKMNPQRTVWXY';
export const codeLength = 6;

const readAs: Readonly<Record<string, string>> = {
  O: '0',
  I: '1',
  L: '1',
  Z: '2',
  S: '5',
  B: '8',
  U: 'V',
};

/** The code as it is stored, or undefined when what was typed cannot be one. Case, spaces and dashes do not matter. */
export function normaliseCode(typed: string): string | undefined {
  const code = [...typed.toUpperCase().replace(/[\s\p{Pd}]/gu, '')]
    .map((letter) => (Object.hasOwn(readAs, letter) ? readAs[letter] : letter))
    .join('');
  const valid = code.length === codeLength && [...code].every((letter) => codeAlphabet.includes(letter));
  return valid ? code : undefined;
}
