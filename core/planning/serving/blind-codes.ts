import { shuffled } from '../../shuffle.ts';

/**
 * Three-digit codes that mean nothing. Coding samples with three-digit random numbers is ISO 13299:2016; which
 * numbers say too much is our own list, stated below so that it can be argued with.
 */
export type CodeMeaning =
  /** Not three digits, or 0 in front: it would be written or read out in two ways. */
  | 'not-three-digits'
  /** 0 at the end: it reads as a round figure, a percentage or an amount. */
  | 'round'
  /** A digit twice: easy to remember, easy to prefer, easy to garble when spoken. */
  | 'repeated-digit'
  /** Digits that climb or fall by equal steps: 123, 987, 246, 951. */
  | 'run'
  /** Made of 0, 1, 6, 8 and 9 only: it reads as another number from the far side of the table. */
  | 'upside-down'
  /** It begins as a year of living memory does: 19x, 20x. */
  | 'year-like'
  /** A number that is dialled in need somewhere. */
  | 'emergency-number'
  /** The size of a bottle, can or glass in millilitres. */
  | 'bottle-size'
  /** It stands for something in common speech: luck, ill luck, a habit, a sign. */
  | 'figure-of-speech';

/** Common emergency and help lines of many countries, three digits (from memory). */
const emergencyNumbers = new Set(
  '100 101 102 103 104 105 106 107 108 110 111 112 113 114 115 116 117 118 119 120 122 123 124 127 128 129 '
    .concat(
      '131 132 133 140 144 147 150 155 158 160 166 170 171 180 185 187 188 190 191 192 193 194 195 196 197 198 199 ',
      '211 311 411 511 611 711 811 911 912 913 914 915 917 988 989 990 991 992 993 994 995 996 997 998 999',
    )
    .split(' '),
);

/** Bottles, cans and glasses sold somewhere, in mL, and the near thirds and pints. */
const bottleSizes = new Set(
  '187 189 237 250 275 284 325 330 341 355 375 440 473 500 568 620 640 650 651 700 710 720 750 946'.split(
    ' ',
  ),
);

/**
 * Lucky, unlucky, coarse or coded numbers in common use, signs and codes of the network, the days of a year,
 * and the like (from memory; every culture has more).
 */
const figuresOfSpeech = new Set(
  '130 143 168 180 182 187 213 216 218 247 248 250 268 273 302 305 314 316 328 345 350 360 365 366 368 369 386 401 '
    .concat(
      '403 404 408 418 420 421 429 451 502 503 504 514 518 520 521 529 530 548 587 613 616 666 669 690 720 721 737 747 ',
      '757 767 787 786 801 808 831 868 888 905 917 918 920 968',
    )
    .split(' '),
);

/** Why a code is not neutral, or undefined where nothing speaks against it. */
export function meaningOf(code: string): CodeMeaning | undefined {
  if (!/^[1-9][0-9]{2}$/.test(code)) return 'not-three-digits';
  const [a = 0, b = 0, c = 0] = [...code].map(Number);
  if (emergencyNumbers.has(code)) return 'emergency-number';
  if (bottleSizes.has(code)) return 'bottle-size';
  if (figuresOfSpeech.has(code)) return 'figure-of-speech';
  if (c === 0) return 'round';
  if (a === b || b === c || a === c) return 'repeated-digit';
  if (b - a === c - b) return 'run';
  if (/^[01689]{3}$/.test(code)) return 'upside-down';
  return /^(19|20)/.test(code) ? 'year-like' : undefined;
}

/** How many whole numbers from `from` to `to`, both counted: 900 from 100 to 999. */
export const codesBetween = (from: number, to: number): number => Math.max(0, to - from + 1);

/** Every code that means nothing, in rising order. */
export const neutralCodes: readonly string[] = Array.from({ length: codesBetween(100, 999) }, (_, index) =>
  String(100 + index),
).filter((code) => meaningOf(code) === undefined);

/** Alike when two of the three places agree or the digits are the same: easily taken for each other by ear or hand. */
export function alike(one: string, other: string): boolean {
  const samePlaces = [...one].filter((digit, place) => digit === other[place]).length;
  return samePlaces >= 2 || [...one].sort().join('') === [...other].sort().join('');
}

/**
 * `count` different neutral codes, none of `taken`, and none alike as long as there is a choice. A full
 * lineup of 16 always has one: no neutral code is alike to more than 25 of the 428 others.
 * `random` gives numbers from 0 up to but not including 1; the same sequence gives the same codes.
 * Throws a RangeError when more are asked for than there are.
 */
export function drawBlindCodes(
  count: number,
  random: () => number,
  taken: readonly string[] = [],
): readonly string[] {
  if (!Number.isInteger(count) || count < 0) throw new RangeError('The number of codes is a whole number.');
  const pool = shuffled(neutralCodes, random).filter((code) => !taken.includes(code));
  if (count > pool.length) {
    throw new RangeError(`Only ${pool.length} neutral codes are left; ask for no more than that.`);
  }
  const drawn: string[] = [];
  const setAside: string[] = [];
  for (const code of pool) {
    if (drawn.length === count) break;
    const apart = ![...taken, ...drawn].some((other) => alike(code, other));
    (apart ? drawn : setAside).push(code);
  }
  return [...drawn, ...setAside.slice(0, count - drawn.length)];
}
