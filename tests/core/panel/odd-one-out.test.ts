import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialUpperTail } from '../../../core/panel/distributions.ts';
import {
  criticalCorrect,
  type DifferenceTestMethod,
  differenceTest,
  distinguishers,
  exactP,
  exactShare,
} from '../../../core/panel/odd-one-out.ts';
import {
  oddGlass,
  TRIANGLE_ORDERS,
  type TriangleOrder,
  triangleOrdersForSeats,
} from '../../../core/panel/presentation-orders.ts';
import { isFiniteThroughout } from './panel-arbitraries.ts';

const METHODS: readonly DifferenceTestMethod[] = [
  'triangle',
  'duo-trio',
  'tetrad',
  '2-AFC',
  '3-AFC',
  'paired-one-sided',
  'paired-two-sided',
];
const oneSided = METHODS.filter((method) => method !== 'paired-two-sided');
const oneInThree: readonly DifferenceTestMethod[] = ['triangle', 'tetrad', '3-AFC'];

/** Whole-number binomial tail: guesses are right in 1 of `of` ways. */
function fraction(n: number, correct: number, of: bigint): number {
  let ways = 0n;
  let choose = 1n;
  for (let right = 0; right <= n; right += 1) {
    if (right >= correct) ways += choose * (of - 1n) ** BigInt(n - right);
    choose = (choose * BigInt(n - right)) / BigInt(right + 1);
  }
  return Number((ways * 10n ** 18n) / of ** BigInt(n)) / 1e18;
}

const counts = fc
  .integer({ min: 1, max: 120 })
  .chain((n) => fc.tuple(fc.constant(n), fc.integer({ min: 0, max: n })));

describe('the exact p', () => {
  it('equals counting in whole numbers', () => {
    fc.assert(
      fc.property(fc.constantFrom(...oneSided), counts, (method, [n, correct]) => {
        const exact = fraction(n, correct, oneInThree.includes(method) ? 3n : 2n);
        return Math.abs((exactP(method, n, correct) ?? -1) - exact) < 1e-12;
      }),
    );
  });

  it('looks both ways when two-sided', () => {
    fc.assert(
      fc.property(counts, ([n, correct]) => {
        const p = exactP('paired-two-sided', n, correct) ?? -1;
        const mirrored = exactP('paired-two-sided', n, n - correct) ?? -1;
        return p === mirrored && p >= 0 && p <= 1;
      }),
    );
  });

  it.each([
    [10, 11],
    [10, -1],
    [10, 2.5],
    [-1, 0],
    [0, 0],
    [Number.NaN, 0],
    [10, Number.NaN],
    [Number.POSITIVE_INFINITY, 3],
  ])('refuses %d answers with %d right', (n, correct) => {
    expect(exactP('triangle', n, correct)).toBeNull();
    expect(distinguishers('triangle', { n, correct }, { confidence: 0.95, sides: 2 })).toBeNull();
    expect(differenceTest('triangle', { n, correct }).status).toBe(
      n === 0 ? 'no-answers' : 'impossible-count',
    );
  });
});

describe('the critical number', () => {
  it('is enough, and one fewer is not', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...METHODS),
        fc.integer({ min: 1, max: 150 }),
        fc.constantFrom(0.2, 0.1, 0.05, 0.01, 0.001),
        (method, n, alpha) => {
          const critical = criticalCorrect(method, n, alpha);
          const p = (correct: number) => exactP(method, n, correct) ?? 1;
          if (critical === null) return p(n) > alpha;
          return p(critical) <= alpha && p(critical - 1) > alpha && critical > n / 3;
        },
      ),
    );
  });

  it('counts a tail that equals alpha', () => {
    expect(criticalCorrect('duo-trio', 2, 0.25)).toBe(2);
    expect(criticalCorrect('duo-trio', 3, 0.125)).toBe(3);
  });

  it('is none where even all right would not do', () => {
    expect(differenceTest('triangle', { n: 2, correct: 2 })).toMatchObject({ critical: null, shown: false });
    expect(criticalCorrect('triangle', 0, 0.05)).toBeNull();
  });

  it('takes the larger side of a two-sided comparison', () => {
    expect(differenceTest('paired-two-sided', { n: 10, correct: 1 }).status).toBe('tested');
    expect(differenceTest('paired-two-sided', { n: 10, correct: 1 })).toMatchObject({ shown: true });
    expect(differenceTest('paired-one-sided', { n: 10, correct: 1 })).toMatchObject({ shown: false });
  });
});

describe('distinguishers', () => {
  it('are finite for every count', () => {
    fc.assert(
      fc.property(counts, fc.constantFrom(1 as const, 2 as const), ([n, correct], sides) =>
        isFiniteThroughout(distinguishers('3-AFC', { n, correct }, { confidence: 0.9, sides })),
      ),
      { numRuns: 30 },
    );
  });
});

describe('exact limits of a share', () => {
  it('do not fall together when all are right', () => {
    const found = distinguishers('triangle', { n: 3, correct: 3 }, { confidence: 0.95, sides: 2 });
    expect(found).toMatchObject({ lower: 1, upper: 1 });
    // P(3 of 3) = 0.025 at the share 0.025^(1/3) = 0.2924, which lies below the third that guessing gives.
    expect(found?.exact).toEqual({ lower: 0, upper: 1 });
    const ten = distinguishers('triangle', { n: 10, correct: 10 }, { confidence: 0.95, sides: 2 });
    expect(ten?.exact.lower).toBeCloseTo((0.025 ** (1 / 10) - 1 / 3) / (2 / 3), 12);
    expect(ten?.exact.upper).toBe(1);
  });

  it('hold the share, and miss what was found with chance alpha or less on each side', () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 0.001, max: 0.4, noNaN: true }), ([n, correct], alpha) => {
        fc.pre(n > 0);
        const [lower, upper] = exactShare({ n, correct }, alpha);
        expect(lower).toBeLessThanOrEqual(correct / n);
        expect(upper).toBeGreaterThanOrEqual(correct / n);
        if (correct > 0) expect(binomialUpperTail(correct, n, lower)).toBeCloseTo(alpha, 9);
        if (correct < n) expect(1 - binomialUpperTail(correct + 1, n, upper)).toBeCloseTo(alpha, 9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('orders of the glasses', () => {
  const seeded = (seed: number) => {
    let state = seed;
    return () => {
      state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
      return state / 2_147_483_648;
    };
  };
  const gap = (orders: readonly TriangleOrder[], of: (order: TriangleOrder) => unknown) => {
    const uses = (value: unknown) => orders.filter((order) => of(order) === value).length;
    const all = [...new Set(TRIANGLE_ORDERS.map(of))].map(uses);
    return Math.max(...all) - Math.min(...all);
  };
  const oddDrink = (order: TriangleOrder) => order[oddGlass(order)];

  it('spread orders, places of the odd glass and odd drinks as evenly as the seats allow', () => {
    fc.assert(
      fc.property(fc.nat(200), fc.integer({ min: 1, max: 1e6 }), (seats, seed) => {
        const orders = triangleOrdersForSeats(seats, seeded(seed));
        expect(orders.length).toBe(seats);
        expect(gap(orders, (order) => order)).toBeLessThanOrEqual(1);
        expect(gap(orders, oddGlass)).toBeLessThanOrEqual(1);
        expect(gap(orders, oddDrink)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('depend on the lot', () => {
    const drawn = new Set(
      Array.from({ length: 40 }, (_, seed) => triangleOrdersForSeats(6, seeded(seed + 1)).join()),
    );
    expect(drawn.size).toBeGreaterThan(20);
  });

  it('point at the glass that differs', () => {
    for (const order of TRIANGLE_ORDERS) {
      const odd = order[oddGlass(order)];
      expect([...order].filter((letter) => letter === odd)).toHaveLength(1);
    }
  });

  it('refuse half a seat', () => {
    expect(() => triangleOrdersForSeats(2.5, seeded(1))).toThrow(RangeError);
    expect(() => triangleOrdersForSeats(-1, seeded(1))).toThrow(RangeError);
  });
});
