import { brierScore, type Stated } from '../../core/panel/guess/brier.ts';
import { sureFact } from '../../core/panel/guess/guess.ts';
import { countryOf } from '../../core/panel/guess/nearness.ts';
import { type Trend, trendOf } from '../../core/panel/guess/trend.ts';
import type { NoteValues } from '../notes/entry.ts';
import type { Keepsake } from '../wire/http.ts';
import { judged } from './guess-texts.ts';

/** How near the guesses of one evening were. */
export interface GuessProgress {
  /** The share of what there was to choose from that is as near or nearer, in the mean over all guesses; less is better. */
  readonly asNear: number;
  /** See `brierScore`; undefined where the guest never said how sure they were. */
  readonly sureness: number | undefined;
}

/** @returns null where nothing that was guessed is known yet */
export function guessProgress({
  guess: asked,
  pours,
}: Pick<Keepsake, 'guess' | 'pours'>): GuessProgress | null {
  // A server of before guesses tells nothing of them.
  if (!asked) return null;
  const pages = pours.flatMap(({ truth, entries }) => {
    const guess = entries.find(({ field }) => field === 'guess')?.value as NoteValues['guess'] | undefined;
    return truth && guess ? [{ guess, near: judged(guess, truth, asked.choices) }] : [];
  });
  const near = pages.flatMap((page) => page.near);
  if (near.length === 0) return null;
  const about = sureFact(asked.choices);
  const stated = pages.flatMap((page): Stated[] => {
    const answer = page.near.find(({ fact }) => fact === about);
    if (page.guess.sure === undefined || answer === undefined) return [];
    const right =
      about === 'origin' ? countryOf(answer.guess) === countryOf(answer.truth) : answer.distance === 0;
    return [{ sure: Number(page.guess.sure) / 100, right }];
  });
  return {
    asNear: near.reduce((sum, { chance }) => sum + chance, 0) / near.length,
    sureness: brierScore(stated),
  };
}

/** Whether guesses get nearer from evening to evening, the oldest first. */
export const guessTrend = (evenings: readonly (GuessProgress | null)[]): Trend | undefined =>
  trendOf(evenings.flatMap((each) => each?.asNear ?? []));
