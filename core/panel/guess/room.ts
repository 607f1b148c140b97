import { chanceLevel } from './chance.ts';
import type { GuessFact, GuessValue } from './guess.ts';
import { distanceOf, withinChoices } from './nearness.ts';

/** What one guest lets count of one fact, with the name that may be said should nobody be nearer. */
export interface CountedGuess {
  readonly value: GuessValue;
  readonly name: string | null;
}

/** The guesses of a room of one fact of one pour, beside the truth; of no person but who agreed to be named. */
export interface RoomGuess {
  readonly fact: GuessFact;
  readonly truth: GuessValue;
  readonly guests: number;
  /** Names by how many have them, numbers from the least. */
  readonly spread: readonly { readonly value: GuessValue; readonly guests: number }[];
  /** See `chanceLevel`. */
  readonly chance: number;
  readonly approximate: boolean;
  /** Of those that nobody is nearer than, who may be named. */
  readonly nearest: readonly string[];
}

/** With one or two, who sees the picture and knows their own guess reads the other one off it. */
const leastGuests = 3;

/** @returns undefined of fewer than three guests */
export function roomGuess(
  fact: GuessFact,
  truth: GuessValue,
  choices: readonly GuessValue[],
  counted: readonly CountedGuess[],
): RoomGuess | undefined {
  if (counted.length < leastGuests) return undefined;
  const guesses = counted.map(({ value }) => value);
  const level = chanceLevel([{ fact, choices, truth, guesses }]);
  if (level === undefined) return undefined;
  const spread = [...new Set(guesses)]
    .map((value) => ({ value, guests: guesses.filter((each) => each === value).length }))
    .sort((one, other) => inOrder(one, other));
  const { chance, approximate } = level;
  return {
    fact,
    truth,
    guests: counted.length,
    spread,
    chance,
    approximate,
    nearest: nearestOf(fact, truth, choices, counted),
  };
}

type Share = RoomGuess['spread'][number];
const inOrder = (one: Share, other: Share): number =>
  typeof one.value === 'number' && typeof other.value === 'number'
    ? one.value - other.value
    : other.guests - one.guests || (String(one.value) < String(other.value) ? -1 : 1);

/** Nobody is named where that would leave one or two whose guesses could then be told apart. */
function nearestOf(
  fact: GuessFact,
  truth: GuessValue,
  choices: readonly GuessValue[],
  counted: readonly CountedGuess[],
): string[] {
  const known = withinChoices(truth, choices);
  const least = Math.min(...counted.map(({ value }) => distanceOf(fact, value, known)));
  const named = counted.flatMap(({ value, name }) =>
    name !== null && distanceOf(fact, value, known) === least ? [name] : [],
  );
  const others = counted.length - named.length;
  return others > 0 && others < leastGuests ? [] : named.toSorted();
}
