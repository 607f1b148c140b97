import type { Meaning } from './meanings.ts';

/** Why a cell cannot be kept as it stands. `least` and `most` are in the unit of the column. */
export type CellProblem =
  | { readonly code: 'name-missing' }
  | { readonly code: 'too-long'; readonly letters: number; readonly most: number }
  | { readonly code: 'not-a-number' }
  /** A number, and then something that is no unit of this column. */
  | { readonly code: 'unit-unknown'; readonly rest: string }
  /** A bare number that could be centilitres or millilitres. */
  | { readonly code: 'unit-missing' }
  | { readonly code: 'out-of-range'; readonly value: number; readonly least: number; readonly most: number }
  /** `asProof`: the strength in % vol if the number were US proof; absent where that is too strong too. */
  | { readonly code: 'above-any-drink'; readonly value: number; readonly asProof?: number }
  | { readonly code: 'not-whole'; readonly value: number }
  | { readonly code: 'not-yes-or-no' }
  | {
      readonly code: 'not-one-of';
      readonly meaning: 'drink' | 'colour' | 'peat' | 'body' | 'tannin' | 'wine-kind' | 'allergens';
    }
  | { readonly code: 'no-year' }
  | { readonly code: 'not-a-link' }
  | { readonly code: 'not-an-id' }
  /** In a list without headings: a bare number that could be a strength, an age or something else. */
  | { readonly code: 'which-number' };

/** What was understood, but should be said. */
export type CellNote =
  | { readonly code: 'us-proof-halved'; readonly proof: number; readonly abv: number }
  | { readonly code: 'ebc-as-srm'; readonly ebc: number; readonly srm: number }
  | { readonly code: 'ppm-as-peat'; readonly ppm: number; readonly peat: number }
  | { readonly code: 'litres-taken'; readonly ml: number }
  /** `how` it was taken: not at all while nobody has said so. */
  | {
      readonly code: 'other-currency';
      readonly currency: string;
      readonly price: number;
      readonly how: ForeignMoney['how'] | 'open';
    }
  /** The line counts up those above it. */
  | { readonly code: 'a-total' }
  | { readonly code: 'same-as-line'; readonly line: number };

/** What becomes of prices in another currency: `rate` is what one of it is in the evening's, once it is known. */
export type ForeignMoney =
  | { readonly how: 'convert'; readonly rate: number | undefined }
  | { readonly how: 'take' }
  | { readonly how: 'leave' };

/** What was said of a currency, once it can be followed. */
export const saidOf = (money: ForeignMoney | undefined): ForeignMoney | undefined =>
  money?.how === 'convert' && money.rate === undefined ? undefined : money;

export type Fact = string | number | boolean;

export type CellReading =
  /** Nothing stands there, or words that say so: NAS, NV, n/a. */
  | { readonly is: 'empty' }
  | { readonly is: 'fact'; readonly fact: Fact; readonly note?: CellNote; readonly as?: Meaning }
  /** Understood, and not taken. */
  | { readonly is: 'left-out'; readonly note: CellNote }
  /** Words that fit no fact of this drink; they belong in the host's own note. */
  | { readonly is: 'aside' }
  | { readonly is: 'problem'; readonly problem: CellProblem };

export const empty: CellReading = { is: 'empty' };
export const fact = (value: Fact, note?: CellNote): CellReading => ({
  is: 'fact',
  fact: value,
  ...(note && { note }),
});
export const problem = (what: CellProblem): CellReading => ({ is: 'problem', problem: what });

/** Cells that say by a sign or the trade's letters that there is nothing to say; words that do are in the vocabulary. */
export const saysNothing = (cell: string): boolean =>
  /^(|[-–—.?]|n\.? ?\/?a\.?|nas|n\.?v\.?)$/i.test(cell.trim());
