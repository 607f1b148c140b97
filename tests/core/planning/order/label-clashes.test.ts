import { describe, expect, it } from 'vitest';
import { labelClashesOf } from '../../../../core/planning/order/label-clashes.ts';
import { type Pour, pourSchema } from '../../../../core/tasting.ts';

const pour = (facts: Record<string, unknown>): Pour =>
  pourSchema.parse({ id: 'a', name: 'A', drink: 'spirit', ...facts });

describe('figures of one label', () => {
  it.each([
    [{ vintage: 2027 }, 'vintage-in-the-future'],
    [{ vintage: 2010, ageYears: 20 }, 'older-than-its-vintage'],
    [{ vintage: 2010, ageYears: 18 }, 'older-than-its-vintage'],
    [{ bottleMl: 50, pourMl: 60 }, 'pour-larger-than-bottle'],
  ])('%j: %s', (facts, clash) => {
    expect(labelClashesOf(pour(facts), 2026)).toEqual([clash]);
  });

  it.each([
    {},
    { vintage: 2026 },
    { vintage: 2014, ageYears: 12 },
    { vintage: 2014, ageYears: 13 },
    { bottleMl: 50, pourMl: 50 },
  ])('%j go together', (facts) => {
    expect(labelClashesOf(pour(facts), 2026)).toEqual([]);
  });
});
