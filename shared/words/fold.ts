/** Letters that Unicode does not take apart into a plain letter and a mark, and the sigma that ends a word. */
const unparted: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
  ς: 'σ',
};

/**
 * Marks that a reader may leave out: those on Latin, Greek and Cyrillic letters, and the vowel points of Hebrew
 * and Arabic. Vowel signs of other scripts are letters in all but name, and stay.
 */
const leftOut = /[\u0300-\u036f\u0591-\u05c7\u064b-\u065f\u0670]/gu;

/**
 * A text as it is compared: small letters without marks, one space between words, all else dropped. Two texts
 * that fold alike are the same word to a reader. Letters of every script stay.
 */
export function fold(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(leftOut, '')
    .replace(/[ßæœøłđðþıς]/g, (letter) => unparted[letter] ?? letter)
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, ' ')
    .trim();
}

/** The German vowels as they are spelled out where a keyboard lacks them. */
const spelledOut: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' };

/**
 * Every way in which somebody may have typed a text: without its marks, and with them spelled out. "Grüner Tee" is
 * found by "gruner tee" and by "gruener tee"; most texts have one way only.
 */
export function foldings(text: string): readonly string[] {
  const plain = fold(text);
  const german = text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[äöü]/g, (letter) => spelledOut[letter] ?? letter);
  const other = fold(german);
  return other === plain ? [plain] : [plain, other];
}
