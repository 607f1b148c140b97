import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brierScore } from '../../../core/panel/guess/brier.ts';
import { chanceLevel, type GuessedFact } from '../../../core/panel/guess/chance.ts';
import type { GuessValue } from '../../../core/panel/guess/guess.ts';
import { distanceOf, nearnessOf } from '../../../core/panel/guess/nearness.ts';
import { trendOf } from '../../../core/panel/guess/trend.ts';

const lands = ['france', 'france/burgundy', 'france/alsace', 'germany', 'germany/mosel', 'chile'];

describe('how near a guess is', () => {
  it('counts edges in the tree of countries and regions', () => {
    const from = (guess: string) => distanceOf('origin', guess, 'france/burgundy');
    expect(['france/burgundy', 'france', 'france/alsace', 'germany', 'germany/mosel'].map(from)).toEqual([
      0, 1, 2, 3, 4,
    ]);
  });

  it('judges a guess no deeper than what is known', () => {
    expect(distanceOf('origin', 'germany/mosel', 'germany')).toBe(0);
    expect(distanceOf('origin', 'france/alsace', 'germany')).toBe(2);
  });

  it('is a distance in the tree: nothing is nearer by a way round', () => {
    const any = fc.constantFrom('a/x', 'a/y', 'b/x', 'b/z', 'c/x');
    fc.assert(
      fc.property(any, any, any, (one, two, three) => {
        const far = (from: string, to: string) => distanceOf('origin', from, to);
        expect(far(one, two)).toBe(far(two, one));
        expect(far(one, three)).toBeLessThanOrEqual(far(one, two) + far(two, three));
        expect(far(one, two) === 0).toBe(one === two);
      }),
    );
  });

  it('counts years, points of strength and steps of preferred numbers', () => {
    expect(distanceOf('vintage', 2019, 2016)).toBe(3);
    expect(distanceOf('age', 9, 12)).toBe(3);
    expect(distanceOf('abv', 46, 57.1)).toBe(11.1);
    // A decade is ten steps of R10 wherever it begins.
    expect(distanceOf('price', 1000, 10_000)).toBe(10);
    expect(distanceOf('price', 5000, 500)).toBe(10);
    expect(distanceOf('style', 'merlot', 'gamay')).toBe(1);
  });

  it('says how often pointing alone would be as near', () => {
    expect(nearnessOf('origin', 'france', 'france/burgundy', lands).chance).toBe(2 / 6);
    expect(nearnessOf('style', 'b', 'b', ['a', 'b', 'c', 'd']).chance).toBe(1 / 4);
    expect(nearnessOf('age', 10, 12, [8, 10, 12, 14, 16]).chance).toBe(3 / 5);
  });

  it('takes the end of a slider for what lies beyond it', () => {
    expect(nearnessOf('vintage', 1976, 1945, [1976, 1977, 1978])).toMatchObject({
      distance: 0,
      chance: 1 / 3,
    });
  });
});

/** All ways in which as many could have pointed, one by one. */
function bruteForce(facts: readonly GuessedFact[]): number {
  const rankOf = ({ fact, choices, truth }: GuessedFact, value: GuessValue): number => {
    const far = (choice: GuessValue) => distanceOf(fact, choice, truth);
    const nearer = choices.filter((each) => far(each) < far(value)).length;
    return (
      nearer / choices.length + choices.filter((each) => far(each) === far(value)).length / choices.length / 2
    );
  };
  const seats = facts.flatMap((each) => each.guesses.map(() => each));
  const seen = facts.flatMap((each) => each.guesses.map((guess) => rankOf(each, guess)));
  const sum = seen.reduce((a, b) => a + b, 0);
  let ways = 0;
  let asNear = 0;
  const walk = (at: number, so: number): void => {
    const seat = seats[at];
    if (seat === undefined) {
      ways += 1;
      if (so <= sum + 1e-9) asNear += 1;
    } else for (const choice of seat.choices) walk(at + 1, so + rankOf(seat, choice));
  };
  walk(0, 0);
  return asNear / ways;
}

describe('what chance alone would do', () => {
  it('is the upper tail of the binomial for right or wrong', () => {
    const choices = ['a', 'b', 'c', 'd'];
    const level = chanceLevel([{ fact: 'style', choices, truth: 'a', guesses: ['a', 'a', 'b'] }]);
    // Two or more of three at one in four: 3 * 1/16 * 3/4 + 1/64.
    expect(level?.chance).toBeCloseTo(10 / 64, 12);
  });

  it('is what comes of going through all ways to point', () => {
    const fact = fc.oneof(
      fc.record({
        fact: fc.constant('age' as const),
        choices: fc.constant([4, 8, 12, 16, 20]),
        truth: fc.constantFrom(4, 10, 12, 20),
        guesses: fc.array(fc.constantFrom(4, 8, 12, 16, 20), { minLength: 1, maxLength: 4 }),
      }),
      fc.record({
        fact: fc.constant('origin' as const),
        choices: fc.constant(lands),
        truth: fc.constantFrom('france', 'france/burgundy', 'germany/mosel'),
        guesses: fc.array(fc.constantFrom(...lands), { minLength: 1, maxLength: 4 }),
      }),
      fc.record({
        fact: fc.constant('style' as const),
        choices: fc.constant(['a', 'b', 'c']),
        truth: fc.constantFrom('a', 'c'),
        guesses: fc.array(fc.constantFrom('a', 'b', 'c'), { minLength: 1, maxLength: 4 }),
      }),
    );
    fc.assert(
      fc.property(fact, (one) => {
        expect(chanceLevel([one])?.chance).toBeCloseTo(bruteForce([one]), 9);
      }),
      { numRuns: 60 },
    );
  });

  it('adds up several pours with the same list', () => {
    const choices = [4, 8, 12, 16, 20];
    const facts: GuessedFact[] = [
      { fact: 'age', choices, truth: 8, guesses: [8, 12] },
      { fact: 'age', choices, truth: 20, guesses: [16, 4, 20] },
    ];
    expect(chanceLevel(facts)?.chance).toBeCloseTo(bruteForce(facts), 9);
  });

  it('comes to one half in the mean where everybody points', () => {
    const choices = [4, 8, 12, 16, 20];
    expect(chanceLevel([{ fact: 'age', choices, truth: 12, guesses: choices }])?.mean).toBeCloseTo(0.5, 12);
  });

  it('goes over to the normal curve near the exact count where that would take too long', () => {
    const choices = Array.from({ length: 41 }, (_, age) => age);
    const guesses = Array.from({ length: 400 }, (_, at) => (at * 17) % 38);
    const level = chanceLevel([{ fact: 'age', choices, truth: 15, guesses }]);
    const few = chanceLevel([{ fact: 'age', choices, truth: 15, guesses: guesses.slice(0, 60) }]);
    expect(level?.approximate).toBe(true);
    expect(few?.approximate).toBe(false);
    expect(level?.chance).toBeGreaterThan(0);
    expect(level?.chance).toBeLessThan(1);
  });

  it('says nothing of nobody', () => {
    expect(chanceLevel([{ fact: 'style', choices: ['a', 'b'], truth: 'a', guesses: [] }])).toBeUndefined();
  });
});

describe('sureness', () => {
  it('is scored so that nobody expects more by saying another chance than the one they believe', () => {
    const expected = (said: number, true_: number) =>
      true_ * (brierScore([{ sure: said, right: true }]) ?? 0) +
      (1 - true_) * (brierScore([{ sure: said, right: false }]) ?? 0);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (p, q) => {
          expect(expected(p, p)).toBeLessThanOrEqual(expected(q, p) + 1e-12);
        },
      ),
    );
  });
});

describe('getting nearer from evening to evening', () => {
  it('needs two evenings, and takes a tie for no gain', () => {
    expect(trendOf([0.3])).toBeUndefined();
    expect(trendOf([0.3, 0.3])).toMatchObject({ chance: 1 });
    expect(trendOf([0.4, 0.3])).toMatchObject({ chance: 0.5 });
  });

  it('is what comes of going through all orders of the evenings', () => {
    const orders = (rest: readonly number[]): number[][] =>
      rest.length === 0
        ? [[]]
        : rest.flatMap((each) =>
            orders(rest.filter((other) => other !== each)).map((more) => [each, ...more]),
          );
    const all = orders([1, 2, 3, 4, 5]);
    const score = (row: readonly number[]) => trendOf(row)?.score ?? 0;
    for (const row of all.filter((_, index) => index % 7 === 0)) {
      const asGood = all.filter((other) => score(other) >= score(row)).length / all.length;
      expect(trendOf(row)?.chance).toBeCloseTo(asGood, 12);
    }
  });
});
