import type { GuessFact, GuessValue } from './guess.ts';

/**
 * How far a guess is from the truth; 0 is right. One measure for each kind of fact:
 *
 * - style: 0 or 1, for a grape or a kind of spirit is it or is not.
 * - origin: edges on the way through the tree of countries and regions, after Rada, Mili, Bicknell and Blettner, "Development
 *   and application of a metric on semantic nets", IEEE Transactions on Systems, Man, and Cybernetics 19 (1989). A guess that
 *   goes deeper than what is known is judged as deep as that.
 * - vintage and age: years. Strength: points of % vol.
 * - price: steps of the series R10 of preferred numbers (ISO 3), ten to a decade: what is felt in a price is by what part it is
 *   off, so 10 for 20 is as far as 50 for 100.
 */
export function distanceOf(fact: GuessFact, guess: GuessValue, truth: GuessValue): number {
  switch (fact) {
    case 'style':
      return guess === truth ? 0 : 1;
    case 'origin':
      return edgesBetween(pathOf(guess).slice(0, pathOf(truth).length), pathOf(truth));
    case 'vintage':
    case 'age':
    case 'abv':
      return rounded(Math.abs(Number(guess) - Number(truth)));
    case 'price':
      return rounded(Math.abs(stepsOf(Number(guess)) - stepsOf(Number(truth))));
    default:
      return fact satisfies never;
  }
}

/** A guess beside the truth, for a word on how near it was. */
export interface Nearness {
  readonly fact: GuessFact;
  readonly guess: GuessValue;
  readonly truth: GuessValue;
  readonly distance: number;
  /** Of all that could have been answered, the share that is as near or nearer: by chance alone one would be so near so often. */
  readonly chance: number;
}

/** @param choices all that could have been answered */
export function nearnessOf(
  fact: GuessFact,
  guess: GuessValue,
  truth: GuessValue,
  choices: readonly GuessValue[],
): Nearness {
  const known = withinChoices(truth, choices);
  const distance = distanceOf(fact, guess, known);
  const asNear = choices.filter((choice) => distanceOf(fact, choice, known) <= distance).length;
  return { fact, guess, truth, distance, chance: asNear / Math.max(1, choices.length) };
}

/**
 * A number beyond the ends of a slider counts as its end, which is then the best that can be said: "1976 or older". Else the
 * slider would have to tell the oldest of the evening.
 */
export function withinChoices(truth: GuessValue, choices: readonly GuessValue[]): GuessValue {
  if (typeof truth === 'string') return truth;
  const numbers = choices.map(Number);
  return numbers.length === 0 ? truth : Math.min(Math.max(truth, Math.min(...numbers)), Math.max(...numbers));
}

const pathOf = (origin: GuessValue): readonly string[] => String(origin).split('/');
export const countryOf = (origin: GuessValue): string => pathOf(origin)[0] ?? '';

function edgesBetween(one: readonly string[], other: readonly string[]): number {
  const parting = one.findIndex((step, index) => step !== other[index]);
  const shared = parting === -1 ? one.length : parting;
  return one.length + other.length - 2 * shared;
}

const stepsOf = (minor: number): number => 10 * Math.log10(Math.max(1, minor));
/** Differences of decimals that a person holds for equal are equal. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000;
