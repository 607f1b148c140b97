import type { PourId } from '../../ids.ts';
import { chanceLevel } from './chance.ts';
import { type Guess, type GuessFact, type GuessSheet, type GuessValue, guessFacts } from './guess.ts';
import { distanceOf, withinChoices } from './nearness.ts';

/** How guesses of one fact spread over a room: names by how many have them, numbers from the least. Of no person. */
export interface FactSpread {
  readonly fact: GuessFact;
  readonly spread: readonly { readonly value: GuessValue; readonly guests: number }[];
}

/**
 * What a room guessed of one pour, of those who let it count when its name was told; nothing changes it afterwards [Q12]. Of
 * fewer than three it holds nothing, not even how many.
 */
export interface ToldGuesses {
  readonly pour: PourId;
  readonly counts: { readonly counted: number; readonly of: number } | null;
  /** Only facts that three or more guessed. */
  readonly facts: readonly FactSpread[];
}

/** With one or two, who sees the picture and knows their own guess reads the other one off it. */
const leastGuests = 3;

/** @param of how many guessed, whether they let it count or not */
export function toldGuesses(pour: PourId, counted: readonly Guess[], of: number): ToldGuesses {
  if (counted.length < leastGuests) return { pour, counts: null, facts: [] };
  const facts = guessFacts.flatMap((fact): FactSpread[] => {
    const guesses = counted.flatMap((guess) => guess[fact] ?? []);
    return guesses.length < leastGuests ? [] : [{ fact, spread: spreadOf(guesses) }];
  });
  return { pour, counts: { counted: counted.length, of }, facts };
}

const spreadOf = (guesses: readonly GuessValue[]): FactSpread['spread'] =>
  [...new Set(guesses)]
    .map((value) => ({ value, guests: guesses.filter((each) => each === value).length }))
    .sort((one, other) => inOrder(one, other));

type Share = FactSpread['spread'][number];
const inOrder = (one: Share, other: Share): number =>
  typeof one.value === 'number' && typeof other.value === 'number'
    ? one.value - other.value
    : other.guests - one.guests || (String(one.value) < String(other.value) ? -1 : 1);

/** Guest by guest again, for reckoning with. */
export const guessesIn = ({ spread }: FactSpread): GuessValue[] =>
  spread.flatMap(({ value, guests }) => Array.from({ length: guests }, () => value));

/** The guesses of a room of one fact of one pour, beside the truth; of no person but who agreed to be named. */
export interface RoomGuess extends FactSpread {
  readonly truth: GuessValue;
  readonly guests: number;
  /** See `chanceLevel`. */
  readonly chance: number;
  readonly approximate: boolean;
  /** Of those that nobody is nearer than, who may be named. */
  readonly nearest: readonly string[];
}

/** Who lets their guess count and may be named with it. */
export interface NamedGuess {
  readonly guess: Guess;
  readonly name: string;
}

/** What was told, beside what is known of the pour; a fact that nobody knows is left out. */
export function roomGuesses(
  { facts }: ToldGuesses,
  truth: Partial<Record<GuessFact, GuessValue>>,
  sheet: GuessSheet,
  named: readonly NamedGuess[],
): RoomGuess[] {
  return facts.flatMap((told): RoomGuess[] => {
    const { fact, spread } = told;
    const known = truth[fact];
    const choices = sheet[fact] ?? [];
    if (known === undefined) return [];
    const guesses = guessesIn(told);
    const level = chanceLevel([{ fact, choices, truth: known, guesses }]);
    if (level === undefined) return [];
    const { chance, approximate } = level;
    const far = (value: GuessValue) => distanceOf(fact, value, withinChoices(known, choices));
    const least = Math.min(...guesses.map(far));
    const nearest = named.flatMap(({ guess, name }) => {
      const value = guess[fact];
      return value !== undefined && far(value) === least ? [name] : [];
    });
    return [
      {
        fact,
        truth: known,
        guests: guesses.length,
        spread,
        chance,
        approximate,
        nearest: hides(guesses.length - nearest.length) ? nearest.toSorted() : [],
      },
    ];
  });
}

/** Nobody is named where that would leave one or two whose guesses could then be told apart. */
const hides = (others: number): boolean => others <= 0 || others >= leastGuests;
