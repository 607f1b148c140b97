import type { Drink } from '../drinks/drink-kinds.ts';
import {
  type Guess,
  type GuessFact,
  type GuessSheet,
  type GuessTruth,
  type GuessValue,
  sureFact,
} from '../panel/guess/guess.ts';
import type { Plan, Pour } from '../tasting.ts';
import type { EpochMs } from '../units.ts';
import { askedFacts } from './asked-facts.ts';
import { tradeOrigins, usualCountries } from './trade-origins.ts';
import { tradeStyles } from './trade-styles.ts';
import { originOf, styleOf } from './trade-words.ts';

/** What the plan knows of a pour that can be guessed. */
export function truthOf(pour: Pour): GuessTruth {
  const origin = originOf(pour, pour.drink);
  return {
    ...(pour.style ? { style: styleOf(pour.style, pour.drink) } : {}),
    ...(origin === undefined ? {} : { origin }),
    ...(pour.vintage === undefined ? {} : { vintage: pour.vintage }),
    ...(pour.ageYears === undefined ? {} : { age: pour.ageYears }),
    ...(pour.abv === undefined ? {} : { abv: pour.abv }),
    ...(pour.priceMinor ? { price: pour.priceMinor } : {}),
  };
}

/**
 * What there is to choose from, drawn once when the doors open, the same for all seats: two lists that differ would tell what
 * they share, and a list that changed with the plan would tell what did. Beside the evening's own values stand at least as
 * many others of the trade; sliders have the range of the drink, never that of the evening.
 *
 * @param draw a secret of the server's, by which the others are drawn: who could draw them again could take them off
 * @returns null where nothing is asked
 */
export function guessSheet(plan: Plan, openedAt: EpochMs, draw: string): GuessSheet | null {
  const asked = askedFacts(plan);
  if (asked.length === 0) return null;
  const truths = plan.pours.map(truthOf);
  const drinks = [...new Set([plan.drink, ...plan.pours.map(({ drink }) => drink)])];
  const own = (fact: GuessFact) => truths.flatMap((truth) => truth[fact] ?? []);
  const choices = (fact: GuessFact): readonly GuessValue[] => {
    switch (fact) {
      case 'style':
        return withOthers(
          own(fact).map(String),
          drinks.flatMap((drink) => Object.keys(tradeStyles[drink])),
          draw,
        );
      case 'origin':
        return origins(own(fact).map(String), drinks, draw);
      case 'vintage':
        return steps(yearOf(openedAt) - 50, yearOf(openedAt), 1);
      case 'age':
        return steps(0, 40, 1);
      case 'abv':
        return strengths(drinks);
      case 'price':
        return prices(own(fact).map(Number));
      default:
        return fact satisfies never;
    }
  };
  return Object.fromEntries(asked.map((fact) => [fact, choices(fact)]));
}

/** As one seat sees it: names in an order of its own, which is neither that of the plan nor the neighbour's. */
export function sheetFor(sheet: GuessSheet, seat: string): GuessSheet {
  const drawn = (fact: 'style' | 'origin') =>
    sheet[fact] === undefined ? {} : { [fact]: shuffledBy(sheet[fact].map(String), `${seat} ${fact}`) };
  return { ...sheet, ...drawn('style'), ...drawn('origin') };
}

/** Whether every value is one of those that the sheet offers; nothing else may ever come onto a screen. */
export const isGuess = (sheet: GuessSheet, { sure, ...facts }: Guess): boolean =>
  Object.entries(facts).every(([fact, value]) => sheet[fact as GuessFact]?.includes(value) ?? false) &&
  (sure === undefined || sureFact(sheet) !== undefined);

/** So many names stand in a list at least, and at least twice the evening's own. */
const leastNames = 8;

function withOthers(
  own: readonly string[],
  trade: readonly string[],
  draw: string,
  least = leastNames,
): string[] {
  const known = [...new Set(own)];
  const others = shuffledBy(
    [...new Set(trade)].filter((each) => !known.includes(each)),
    draw,
  );
  return [...known, ...others.slice(0, Math.max(least - known.length, known.length))].toSorted();
}

/** Countries, and with each of them every region that the trade or the evening has there. */
function origins(own: readonly string[], drinks: readonly Drink[], draw: string): string[] {
  const usual = drinks.flatMap((drink) => usualCountries[drink]);
  const tops = withOthers(
    own.map((path) => path.split('/')[0] ?? ''),
    usual,
    draw,
  );
  const regions = tops.flatMap((top) =>
    drinks.flatMap((drink) =>
      Object.keys(tradeOrigins[top]?.regions[drink] ?? {}).map((code) => `${top}/${code}`),
    ),
  );
  return [...new Set([...tops, ...regions, ...own])].toSorted();
}

/** In % vol, from light to strong (common practice, no source). */
const range: Readonly<Record<Drink, readonly [number, number]>> = {
  wine: [5, 23],
  spirit: [35, 70],
  beer: [0, 15],
};

function strengths(drinks: readonly Drink[]): number[] {
  const ends = drinks.flatMap((drink) => range[drink]);
  return steps(Math.min(...ends), Math.max(...ends), drinks.includes('spirit') ? 1 : 0.5);
}

/** The series R10 of preferred numbers (ISO 3:1973), rounded values of one decade. */
const r10 = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8];

/** Two decades of R10 about the middle price: only the power of ten of the evening shows. In minor units. */
function prices(own: readonly number[]): number[] {
  const sorted = own.toSorted((one, other) => one - other);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 1000;
  const decade = 10 ** Math.floor(Math.log10(middle));
  const ladder = [0.1, 1, 10].flatMap((ten) => r10.map((step) => Math.round(step * ten * decade)));
  return [...new Set(ladder.filter((price) => price >= decade / 2 && price <= decade * 50))];
}

const steps = (from: number, to: number, by: number): number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, index) => from + index * by);

/** Of the Gregorian calendar in the mean, which is near enough for a harvest. */
const yearOf = (at: EpochMs): number => 1970 + Math.floor(at / (365.2425 * 24 * 3_600_000));

function shuffledBy(values: readonly string[], draw: string): string[] {
  return values
    .map((value) => ({ value, key: scattered(`${draw} ${value}`) }))
    .toSorted((one, other) => one.key - other.key)
    .map(({ value }) => value);
}

/** 53 bits of a text, for drawing and not for guarding: two rounds of FNV-1a's prime with different beginnings, then mixed. */
function scattered(text: string): number {
  let [one, two] = [0x811c9dc5, 0x41c6ce57];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    one = Math.imul(one ^ code, 0x01000193);
    two = Math.imul(two ^ code, 0x5bd1e995);
  }
  one = Math.imul(one ^ (one >>> 16), 0x85ebca6b) ^ Math.imul(two ^ (two >>> 13), 0xc2b2ae35);
  two = Math.imul(two ^ (two >>> 16), 0x85ebca6b) ^ Math.imul(one ^ (one >>> 13), 0xc2b2ae35);
  return 2 ** 21 * (two >>> 0) + ((one >>> 0) >>> 11);
}
