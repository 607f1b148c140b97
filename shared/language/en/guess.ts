import type { GuessFact } from '../../../core/panel/guess/guess.ts';
import { countingIn } from '../counting.ts';
import { moneyIn } from '../money.ts';

const years = (count: number): string => countingIn('en')(count, 'year', 'years');
const decimal = new Intl.NumberFormat('en', { maximumFractionDigits: 1 });
const money = moneyIn('en');
const part = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 });

/** What guests and the room read about guesses. Another language is one more file of this shape. */
export const guessWords = {
  title: 'Your guess',
  lead: 'What is in this glass? Guess as much as you like until the names are told. Nobody sees it before.',
  none: 'No guess',
  facts: {
    style: { wine: 'Grape', spirit: 'Kind of spirit', beer: 'Style of beer' },
    origin: 'Country',
    region: 'Region',
    vintage: 'Vintage',
    age: 'Age',
    abv: 'Strength',
    price: 'Price of a bottle',
  },
  noRegion: 'Not sure of the region',
  less: (fact: string) => `${fact}: less`,
  more: (fact: string) => `${fact}: more`,
  takeBack: (fact: string) => `No guess for: ${fact}`,
  values: {
    age: years,
    abv: (abv: number) => `${decimal.format(abv)}\u00a0%\u00a0vol`,
    price: (minor: number, currency: string): string => money(minor, currency),
    orOlder: (value: string) => `${value} or older`,
    orMore: (value: string) => `${value} or more`,
    orLess: (value: string) => `${value} or less`,
  },
  sure: {
    title: { style: 'How sure are you of the first answer?', origin: 'How sure are you of the country?' },
    steps: { 25: 'A hunch', 50: 'Half and half', 75: 'Fairly sure', 95: 'Quite sure' },
  },
  told: {
    title: 'How near you were',
    beside: (guess: string, truth: string) => `${guess}; it is ${truth}`,
    right: 'right',
    wrong: 'something else',
    bothRight: 'right country, right region',
    countryRight: 'right country',
    countryWrong: 'another country',
    tooYoung: (count: number) => `${years(count)} too young`,
    tooOld: (count: number) => `${years(count)} too old`,
    tooWeak: (points: number) => `${decimal.format(points)}\u00a0%\u00a0vol too weak`,
    tooStrong: (points: number) => `${decimal.format(points)}\u00a0%\u00a0vol too strong`,
    tooCheap: (share: number) => `${part.format(share)} too cheap`,
    tooDear: (share: number) => `${part.format(share)} too dear`,
  },

  room: {
    title: 'What the room guessed',
    counts: (counted: number, of: number) => `${counted} of ${countingIn('en')(of, 'guess', 'guesses')}`,
    few: 'Fewer than three guests let their guess count, so there is nothing to show.',
    people: (count: number) => countingIn('en')(count, 'guest', 'guests'),
    others: 'Something else',
    chance: (times: number) => `By chance alone, a room would be as near once in ${times} times.`,
    likely: 'By chance alone, a room would often be as near.',
    rarely: 'By chance alone, a room would hardly ever be as near.',
    nearest: (names: string) => `Nearest: ${names}`,
    /** The spread of one fact in a line: "Age, 12 years: 9 years (1), 12 years (2)." */
    line: (fact: string, truth: string, spread: readonly (readonly [string, number])[]) =>
      `${fact}, ${truth}: ${spread.map(([value, guests]) => `${value} (${guests})`).join(', ')}.`,
    row: (value: string, people: string, truth: boolean) =>
      `${value}: ${people}${truth ? ', and right' : ''}`,
  },

  counting: {
    title: 'Does your guess count for the room?',
    counts: 'It counts, without my name',
    own: 'Only for me',
    nearest: 'Say my name if I am the nearest',
    stays: 'Once the name of this glass is told, a guess that counts stays counted.',
    unname: 'Take my name off this',
  },

  recap: {
    title: 'What the room could tell',
    none: 'Too few guests let their guesses count to say anything.',
    said: (told: readonly string[], untold: readonly string[]) =>
      [
        ...(told.length === 0 ? [] : [`Nearer than chance: ${told.join(', ')}.`]),
        ...(untold.length === 0
          ? []
          : [`No nearer than chance, as far as this shows: ${untold.join(', ')}.`]),
      ].join(' '),
    columns: { fact: 'Fact', glasses: 'Glasses', guesses: 'Guesses', nearer: 'Nearer than' },
    share: (share: number) => part.format(share),
  },

  progress: {
    near: (share: number) => `guesses: nearer than ${part.format(share)} of what there was to choose from`,
    sure: (score: number) =>
      `sureness: ${decimal.format(score * 100)} points off, where always saying “half and half” gets 25`,
    trend: {
      few: 'Two evenings with guesses, or more, show whether you are getting nearer.',
      nearer: (times: number) =>
        `You are getting nearer. By chance, evenings would go as well once in ${times} times.`,
      maybe: (times: number) =>
        `You may be getting nearer, but by chance evenings would go as well once in ${times} times.`,
      not: 'So far your guesses are not getting nearer. That says little yet.',
    },
  },
};

export type GuessWords = typeof guessWords;
/** Facts that are called the same for every drink. */
export type PlainFact = Exclude<GuessFact, 'style'>;
