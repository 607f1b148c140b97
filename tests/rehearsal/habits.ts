import type { Guess, GuessSheet } from '../../core/panel/guess/guess.ts';
import type { Consents } from '../../shared/wire/sharing.ts';

/** What a stand-in does besides tasting. Each is something that happens at real tables. */
const habits = [
  /** Sits down in time and stays. */
  'steady',
  /** Comes when the first glasses are empty. */
  'late',
  /** Loads the page again while writing. */
  'reloads',
  /** The Wi-Fi drops again and again. */
  'drops',
  /** The phone sleeps through a glass. */
  'sleeps',
  /** Goes on with a second device. */
  'second-device',
] as const;
export type Habit = (typeof habits)[number];

/** One of each before any comes twice, and in another order for every seed; the first is always steady. */
export function habitsFor(guests: number, chance: () => number): Habit[] {
  const shuffled: Habit[] = [];
  while (shuffled.length < guests - 1) shuffled.push(...inAnyOrder(habits.slice(1), chance), 'steady');
  return ['steady', ...shuffled.slice(0, guests - 1)];
}

/** Fisher and Yates' shuffle. */
function inAnyOrder<Item>(items: readonly Item[], chance: () => number): Item[] {
  const left = [...items];
  const taken: Item[] = [];
  while (left.length > 0) taken.push(...left.splice(Math.floor(chance() * left.length), 1));
  return taken;
}

/** What a stand-in lets out of their hands. */
export interface Manner {
  readonly table: 'named' | 'unnamed' | 'private';
  /** Whether their order, liking, odd pick and guess count. */
  readonly counts: boolean;
}

/** Two of three share, a third of them without a name, and two of three let count, not the same two (own estimate, no source). */
export const mannerOf = (index: number): Manner => ({
  table: (['named', 'unnamed', 'private', 'named', 'named', 'private'] as const)[index % 6] ?? 'private',
  counts: index % 3 !== 0,
});

/**
 * As it comes, of what is asked. Four of five try it at a glass, and leave a question open here and there (own estimate, no
 * source). @returns null without a guess
 */
export function guessBy(choices: GuessSheet, chance: () => number): Guess | null {
  if (chance() > 0.8) return null;
  const answers = Object.entries(choices).flatMap(([fact, all]) => {
    const value = all[Math.floor(all.length * chance())];
    return value === undefined || chance() < 0.2 ? [] : [[fact, value] as const];
  });
  return answers.length === 0 ? null : Object.fromEntries(answers);
}

/** A third of those who let it count would also be named. */
export const guessConsents = ({ counts }: Manner, chance: () => number): Consents =>
  counts
    ? { guess: 'counts', nearest: chance() < 1 / 3 ? 'may-be-named' : 'unnamed' }
    : { guess: 'only-for-me', nearest: 'unnamed' };

/** Invented, so that nobody finds themselves in a rehearsal. */
const names = [
  'Adda',
  'Brun',
  'Ceel',
  'Dovi',
  'Esk',
  'Fenna',
  'Gild',
  'Hovi',
  'Ilse',
  'Jorr',
  'Kett',
  'Lumi',
];
export const nameFor = (index: number): string =>
  `${names[index % names.length] ?? 'Guest'} ${Math.floor(index / names.length) + 1}`;

const words = [
  'pear skin',
  'wet slate',
  'candle just out',
  'warm hay',
  'orange pith',
  'tar rope',
  'new leather',
  'honeycomb',
  'sea wind',
  'bread crust',
  'cold ashes',
  'green walnut',
];
export const wordsBy = (chance: () => number): string =>
  inAnyOrder(words, chance)
    .slice(0, 1 + Math.floor(chance() * 3))
    .join(', ');
