import {
  type Guess,
  type GuessFact,
  type GuessSheet,
  type GuessTruth,
  type GuessValue,
  guessFacts,
} from '../../core/panel/guess/guess.ts';
import { countryOf, type Nearness, nearnessOf } from '../../core/panel/guess/nearness.ts';
import { guessWords as words } from '../language/en/guess.ts';
import type { RoomGuesses } from '../wire/guesses.ts';
import type { Drink } from '../wire/views.ts';
import { spreadRows } from './spread-rows.ts';
import { originName, styleName } from './trade-names.ts';

/** What a fact is called for this drink. */
export const factName = (fact: GuessFact, drink: Drink): string =>
  fact === 'style' ? words.facts.style[drink] : words.facts[fact];

/** A value as a person reads it. */
export function valueText(fact: GuessFact, value: GuessValue, currency: string): string {
  switch (fact) {
    case 'style':
      return styleName(String(value));
    case 'origin':
      return originName(String(value));
    case 'vintage':
      return String(value);
    case 'age':
      return words.values.age(Number(value));
    case 'abv':
      return words.values.abv(Number(value));
    case 'price':
      return words.values.price(Number(value), currency);
    default:
      return fact satisfies never;
  }
}

/** As `valueText`; the ends of a slider stand for all that lies beyond them. */
export function choiceText(
  fact: GuessFact,
  value: GuessValue,
  choices: readonly GuessValue[],
  currency: string,
): string {
  const text = valueText(fact, value, currency);
  if (typeof value === 'string') return text;
  const first = value === choices[0];
  const last = value === choices.at(-1);
  if (fact === 'vintage') return first ? words.values.orOlder(text) : text;
  if (last) return words.values.orMore(text);
  return first && fact !== 'age' ? words.values.orLess(text) : text;
}

/** Fact by fact how near a guess was, of what was guessed and is known. */
export function judged(guess: Guess, truth: GuessTruth, choices: GuessSheet): Nearness[] {
  return guessFacts.flatMap((fact) => {
    const [value, known] = [guess[fact], truth[fact]];
    if (value === undefined || known === undefined) return [];
    return [nearnessOf(fact, value, known, choices[fact] ?? [])];
  });
}

/** How near, in a word: "right country", "3 years too young". */
export function nearnessText({ fact, guess, truth, distance }: Nearness): string {
  const { told } = words;
  const less = Number(guess) < Number(truth);
  switch (fact) {
    case 'style':
      return distance === 0 ? told.right : told.wrong;
    case 'origin':
      if (distance === 0) return String(truth).includes('/') ? told.bothRight : told.countryRight;
      return countryOf(guess) === countryOf(truth) ? told.countryRight : told.countryWrong;
    case 'vintage':
    case 'age': {
      if (distance === 0) return told.right;
      // A later year is a younger wine, and a higher age an older spirit.
      const young = fact === 'vintage' ? !less : less;
      return young ? told.tooYoung(distance) : told.tooOld(distance);
    }
    case 'abv':
      if (distance === 0) return told.right;
      return less ? told.tooWeak(distance) : told.tooStrong(distance);
    case 'price': {
      const share = Math.abs(Number(guess) / Number(truth) - 1);
      if (share < 0.05) return told.right;
      return less ? told.tooCheap(share) : told.tooDear(share);
    }
    default:
      return fact satisfies never;
  }
}

/** What was guessed, in one line; empty without a guess. */
export const guessLine = (guess: Guess, choices: GuessSheet, currency: string): string =>
  guessFacts
    .flatMap((fact) => {
      const value = guess[fact];
      return value === undefined ? [] : [choiceText(fact, value, choices[fact] ?? [], currency)];
    })
    .join(' · ');

/** How often chance alone would be as near, in a sentence. */
export function chanceText(chance: number): string {
  const { room } = words;
  if (chance > 0.4) return room.likely;
  if (chance < 0.001) return room.rarely;
  return room.chance(Math.max(2, Math.round(1 / chance)));
}

/** A guess and what it was a guess of; what is the same is said once. */
export function besideTruth({ fact, guess, truth }: Nearness, currency: string): string {
  const [said, known] = [guess, truth].map((value) => valueText(fact, value, currency));
  return said === known ? (said ?? '') : words.told.beside(said ?? '', known ?? '');
}

/** What a room guessed of one pour, in sentences: of how many, how each fact spread, and what chance would have done. */
export function roomInWords({ counts, currency, facts }: RoomGuesses, drink: Drink): string[] {
  if (counts === null) return [];
  const value = (fact: GuessFact, of: GuessValue): string => valueText(fact, of, currency);
  return [
    words.room.counts(counts.counted, counts.of),
    ...facts.map((guess) => {
      const { fact, truth, chance } = guess;
      const rows = spreadRows(guess, 5).map(
        (each) => [each.value === null ? words.room.others : value(fact, each.value), each.guests] as const,
      );
      return `${words.room.line(factName(fact, drink), value(fact, truth), rows)} ${chanceText(chance)}`;
    }),
  ];
}
