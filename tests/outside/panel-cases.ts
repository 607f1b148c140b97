import { expect } from 'vitest';

/** One published or independently computed value: which operation, on what, giving what, and who says so. */
export interface PublishedCase {
  readonly name: string;
  readonly input: { readonly op: string };
  readonly expected: unknown;
  readonly tolerance: number;
  readonly source: string;
  readonly basis: string;
}

/**
 * Every number that the case expects must be met within its tolerance, every null by null (undefined figures),
 * every list in its order. Figures that the case does not name are not looked at.
 */
export function expectPublished(actual: unknown, { expected, tolerance, source }: PublishedCase): void {
  compare(actual, expected, tolerance, `against ${source}`);
}

function compare(actual: unknown, expected: unknown, tolerance: number, path: string): void {
  if (typeof expected === 'number') {
    expect(actual, path).toBeTypeOf('number');
    expect(Math.abs(Number(actual) - expected), `${path}: ${actual} for ${expected}`).toBeLessThanOrEqual(
      tolerance,
    );
  } else if (Array.isArray(expected)) {
    if (!Array.isArray(actual)) expect.fail(`${path}: no list`);
    expect(actual.length, path).toBe(expected.length);
    expected.forEach((value, index) => {
      compare(actual[index], value, tolerance, `${path}[${index}]`);
    });
  } else if (typeof expected === 'object' && expected !== null) {
    const figures = new Map(Object.entries(actual ?? {}));
    for (const [key, value] of Object.entries(expected)) {
      compare(figures.get(key), value, tolerance, `${path} ${key}`);
    }
  } else {
    expect(actual, path).toBe(expected);
  }
}

/** Fails for an operation that nobody has connected, so that new cases cannot pass unseen. */
export function unknownOperation(op: never): never {
  throw new Error(`No operation of that name: ${JSON.stringify(op)}`);
}
