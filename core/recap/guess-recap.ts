import { chanceLevel } from '../panel/guess/chance.ts';
import { type GuessFact, guessFacts } from '../panel/guess/guess.ts';
import { guessesIn } from '../panel/guess/room.ts';
import { holmAdjusted } from '../panel/holm.ts';
import { RECAP_ALPHA } from '../panel/recap/panel-result.ts';
import { guessesTold, truthOfPour } from '../session/guesses.ts';
import type { Evening } from '../session/state.ts';

/** Whether a room could tell one fact, over all glasses of the evening. */
export interface ToldFact {
  readonly fact: GuessFact;
  /** Glasses with three guesses or more. */
  readonly pours: number;
  readonly guesses: number;
  /** The share of what there was to choose from that was nearer, in the mean; one half is what pointing comes to. */
  readonly mean: number;
  /** How often chance alone would have been as near, raised for the number of facts (Holm). */
  readonly chance: number;
  readonly approximate: boolean;
  readonly meaning: 'could-tell' | 'not-shown';
}

/**
 * Fact by fact, of the guesses as they were told with the names and of no others: reckoned anew it would show by its
 * difference whose consent has changed since [Q8, Q12]. Null in an evening without guesses.
 */
export function guessRecap(evening: Evening): readonly ToldFact[] | null {
  const { guess: sheet } = evening;
  if (sheet === null) return null;
  const told = guessesTold(evening);
  const found = guessFacts.flatMap((fact) => {
    const choices = sheet[fact] ?? [];
    const guessed = told.flatMap(({ pour, facts }) => {
      const spread = facts.find((each) => each.fact === fact);
      const truth = truthOfPour(evening, pour)?.[fact];
      return spread === undefined || truth === undefined
        ? []
        : [{ fact, choices, truth, guesses: guessesIn(spread) }];
    });
    const level = chanceLevel(guessed);
    const guesses = guessed.reduce((sum, each) => sum + each.guesses.length, 0);
    return level === undefined ? [] : [{ fact, pours: guessed.length, guesses, ...level }];
  });
  const adjusted = holmAdjusted(found.map(({ chance }) => chance));
  return found.map((each, index) => {
    const chance = adjusted[index] ?? 1;
    return { ...each, chance, meaning: chance <= RECAP_ALPHA ? 'could-tell' : 'not-shown' };
  });
}
