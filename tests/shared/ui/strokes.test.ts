import { describe, expect, it } from 'vitest';
import * as strokes from '../../../shared/ui/strokes.ts';

describe.each(Object.entries(strokes))('icon %s', (_name, path) => {
  it('is a path on the grid of 24', () => {
    expect(path).toMatch(/^M[MLHVCSQTAZ\d.\s]+$/);
    const numbers = [...path.matchAll(/\d+(\.\d+)?/g)].map((match) => Number(match[0]));
    expect(Math.max(...numbers)).toBeLessThanOrEqual(24);
  });
});

it('draws no two icons alike', () => {
  const paths = Object.values(strokes);
  expect(new Set(paths).size).toBe(paths.length);
});
