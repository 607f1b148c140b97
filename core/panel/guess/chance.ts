import { binomialUpperTail, normalUpperTail } from '../distributions.ts';
import type { GuessFact, GuessValue } from './guess.ts';
import { distanceOf, withinChoices } from './nearness.ts';

/** Guesses of one fact of one pour, with all that could have been answered. */
export interface GuessedFact {
  readonly fact: GuessFact;
  readonly choices: readonly GuessValue[];
  readonly truth: GuessValue;
  readonly guesses: readonly GuessValue[];
}

export interface ChanceLevel {
  /** How often as many who only point, eyes closed, would have been as near or nearer, all taken together. */
  readonly chance: number;
  /** Reckoned from the normal curve, for the exact count would take too long. */
  readonly approximate: boolean;
  /** From 0, the best possible, to 1; who only points comes to one half in the long run. */
  readonly mean: number;
}

/**
 * The chance that as many guessers who each point at one of the choices, all equally likely, come as near or nearer in sum.
 * Nearness is the mid-rank of a choice among all by its distance, so that years, places and prices can be added up. The
 * distribution of the sum is counted out exactly, which is the permutation principle (Fisher 1935; Lehmann, Nonparametrics,
 * 1975, chapter 1); for right or wrong it is the upper tail of the binomial.
 *
 * @returns undefined where nobody guessed, or there is only one choice
 */
export function chanceLevel(facts: readonly GuessedFact[]): ChanceLevel | undefined {
  const judged = facts.filter(({ choices, guesses }) => choices.length > 1 && guesses.length > 0);
  const count = judged.reduce((all, { guesses }) => all + guesses.length, 0);
  if (count === 0) return undefined;
  const ranked = judged.map((each) => ({ ...each, ranks: doubledRanks(each) }));
  const sum = ranked.reduce((all, { ranks }) => all + ranks.guessed.reduce((a, b) => a + b, 0), 0);
  // Lists of different length are brought to the same unit, the share of the list.
  const share = ranked.reduce(
    (all, { ranks, choices }) => all + ranks.guessed.reduce((a, b) => a + b, 0) / (2 * choices.length),
    0,
  );
  const mean = share / count;
  const [first] = ranked;
  const alike = ranked.every(({ choices }) => choices.length === first?.choices.length);
  const right =
    alike && ranked.every(({ ranks }) => new Set(ranks.all).size === 2) ? rightOnes(ranked) : undefined;
  if (right !== undefined) return { chance: right, approximate: false, mean };
  const work = count * sum * (first?.choices.length ?? 1);
  if (!alike || work > mostWork) return { chance: normalTail(ranked, share), approximate: true, mean };
  return { chance: exactTail(ranked, sum), approximate: false, mean };
}

/** About a tenth of a second. */
const mostWork = 5e7;

interface Ranked extends GuessedFact {
  readonly ranks: { readonly all: readonly number[]; readonly guessed: readonly number[] };
}

/** Twice the mid-rank less one, of every choice and of every guess: whole numbers from 1 to twice the list less one. */
function doubledRanks({ fact, choices, truth, guesses }: GuessedFact): Ranked['ranks'] {
  const known = withinChoices(truth, choices);
  const distances = choices.map((choice) => distanceOf(fact, choice, known));
  const rankOf = (distance: number): number => {
    const nearer = distances.filter((each) => each < distance).length;
    const asNear = distances.filter((each) => each === distance).length;
    return 2 * nearer + asNear;
  };
  return {
    all: distances.map(rankOf),
    guessed: guesses.map((guess) => rankOf(distanceOf(fact, guess, known))),
  };
}

/** Where all is right or wrong with the same chance: the binomial tail; undefined where the chances differ. */
function rightOnes(facts: readonly Ranked[]): number | undefined {
  const chances = facts.map(({ ranks, choices }) => {
    const best = Math.min(...ranks.all);
    return ranks.all.filter((rank) => rank === best).length / choices.length;
  });
  const [chance = 0] = chances;
  if (chances.some((each) => each !== chance)) return undefined;
  const hits = facts.reduce(
    (all, { ranks }) => all + ranks.guessed.filter((rank) => rank === Math.min(...ranks.all)).length,
    0,
  );
  const count = facts.reduce((all, { guesses }) => all + guesses.length, 0);
  return binomialUpperTail(hits, count, chance);
}

/** P(sum <= seen), by adding one guesser after the other; sums beyond `seen` are never looked at. */
function exactTail(facts: readonly Ranked[], seen: number): number {
  let chances = new Float64Array(seen + 1);
  chances[0] = 1;
  for (const { ranks, guesses, choices } of facts) {
    const steps = new Map<number, number>();
    for (const rank of ranks.all) steps.set(rank, (steps.get(rank) ?? 0) + 1 / choices.length);
    for (let guesser = 0; guesser < guesses.length; guesser += 1) {
      const next = new Float64Array(seen + 1);
      for (const [step, chance] of steps) {
        for (let at = step; at <= seen; at += 1)
          next[at] = (next[at] ?? 0) + chance * (chances[at - step] ?? 0);
      }
      chances = next;
    }
  }
  return Math.min(
    1,
    chances.reduce((all, each) => all + each, 0),
  );
}

/** By the mean and variance of who only points, without a correction for continuity. */
function normalTail(facts: readonly Ranked[], share: number): number {
  let mean = 0;
  let variance = 0;
  for (const { ranks, guesses, choices } of facts) {
    const shares = ranks.all.map((rank) => rank / (2 * choices.length));
    const middle = shares.reduce((a, b) => a + b, 0) / shares.length;
    mean += guesses.length * middle;
    variance += (guesses.length * shares.reduce((a, b) => a + (b - middle) ** 2, 0)) / shares.length;
  }
  return variance === 0 ? 1 : normalUpperTail((mean - share) / Math.sqrt(variance));
}
