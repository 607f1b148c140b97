import { expect } from 'vitest';
import { FigureOutOfRange } from '../../core/planning/figures/figure-errors.ts';

/** A case of a published-values file. A null expectation means: there is no answer, and none may be given. */
export interface PublishedCase {
  readonly name: string;
  readonly input: { readonly op: string };
  readonly expected: unknown;
  readonly tolerance: number;
  readonly source: string;
  readonly basis: string;
}

/** Compares number by number within the case's absolute tolerance, everything else exactly. */
export function expectWithin(actual: unknown, expected: unknown, tolerance: number, path = 'answer'): void {
  if (typeof expected === 'number') {
    expect(typeof actual, path).toBe('number');
    expect(Math.abs(Number(actual) - expected), `${path}: ${actual} for ${expected}`).toBeLessThanOrEqual(
      tolerance,
    );
  } else if (Array.isArray(expected)) {
    expect(actual, path).toHaveLength(expected.length);
    for (const [index, each] of expected.entries()) {
      expectWithin((actual as unknown[])[index], each, tolerance, `${path}[${index}]`);
    }
  } else if (typeof expected === 'object' && expected !== null) {
    for (const [key, each] of Object.entries(expected)) {
      expectWithin((actual as Record<string, unknown>)[key], each, tolerance, `${path}.${key}`);
    }
  } else {
    expect(actual, path).toEqual(expected);
  }
}

/** Runs the method; a refusal, thrown or typed, is null. */
export function answerOf(run: () => unknown): unknown {
  try {
    return run();
  } catch (error) {
    if (error instanceof FigureOutOfRange) return null;
    throw error;
  }
}
