import type { Swatch } from './swatches.ts';

/** The senses that words are picked for; the look is noted by swatches. */
export type WordSense = 'nose' | 'palate' | 'finish';

/**
 * What one can tap for one drink, as codes: the text is in a file per language. A family is a place where one
 * would meet the smell, so that a beginner asks "where have I met this?". A word stands in one family only,
 * and a code that two drinks share means the same in both.
 */
export interface WordBoard<
  Family extends string = string,
  Word extends string = string,
  Mark extends string = string,
> {
  readonly families: Readonly<Record<Family, readonly Word[]>>;
  /** The families offered for a sense, the most useful first. */
  readonly senses: Readonly<Record<WordSense, readonly Family[]>>;
  /** What is judged on a scale of five steps. */
  readonly marks: readonly Mark[];
  readonly swatches: readonly Swatch[];
}

/** A mark's name and its five steps, from least to most. */
export interface MarkText {
  readonly name: string;
  readonly steps: readonly [string, string, string, string, string];
}

/** Everything that a language must say for a board: a missing or a stray code does not compile. */
export type BoardText<Board extends WordBoard = WordBoard> = {
  readonly families: Readonly<Record<keyof Board['families'], string>>;
  readonly words: Readonly<Record<Board['families'][keyof Board['families']][number], string>>;
  readonly marks: Readonly<Record<Board['marks'][number], MarkText>>;
  /** In the words of the trade, where it has others; each step names its mark, for it is read by itself too. */
  readonly tradeMarks: Readonly<Partial<Record<Board['marks'][number], MarkText>>>;
  readonly colours: Readonly<Record<Board['swatches'][number]['word'], string>>;
};
