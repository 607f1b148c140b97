import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import type { Guess, GuessTruth } from '../../../core/panel/guess/guess.ts';
import { epochMs } from '../../../core/units.ts';
import { guessProgress } from '../../../shared/guess/guess-progress.ts';
import type { KeepsakePour } from '../../../shared/wire/http.ts';

const guess = {
  choices: { style: ['rye', 'malt', 'pot', 'grain'], age: [8, 10, 12, 14, 16] },
  currency: 'EUR',
};
const glass = (said: Guess, truth: GuessTruth | null): KeepsakePour => ({
  position: 1,
  pour: pourId('one'),
  drink: 'spirit',
  facts: null,
  code: null,
  entries: [{ pour: pourId('one'), field: 'guess', value: said, revision: 1, savedAt: epochMs(1) }],
  truth,
});

describe('how near the guesses of an evening were', () => {
  it('is the share of what there was to choose from that is as near, in the mean, and how sure they were', () => {
    const pours = [
      // One of four is as near, and one of five; they were three quarters sure, and right.
      glass({ style: 'rye', age: 12, sure: 75 }, { style: 'rye', age: 12 }),
      // All four are as near as a wrong one; half sure, and wrong.
      glass({ style: 'pot', sure: 50 }, { style: 'malt', age: 10 }),
    ];
    const progress = guessProgress({ guess, pours });
    expect(progress?.asNear).toBeCloseTo((1 / 4 + 1 / 5 + 1) / 3, 12);
    expect(progress?.sureness).toBeCloseTo((0.25 ** 2 + 0.5 ** 2) / 2, 12);
  });

  it('is nothing before a name is told, without guesses, or from a server of before', () => {
    expect(guessProgress({ guess, pours: [glass({ style: 'rye' }, null)] })).toBeNull();
    expect(guessProgress({ guess, pours: [glass({}, { style: 'rye' })] })).toBeNull();
    expect(guessProgress({ guess: null, pours: [glass({ style: 'rye' }, { style: 'rye' })] })).toBeNull();
    expect(
      guessProgress({ guess, pours: [glass({ style: 'rye' }, { style: 'rye' })] })?.sureness,
    ).toBeUndefined();
  });
});
