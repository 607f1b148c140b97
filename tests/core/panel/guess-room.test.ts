import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import type { Guess } from '../../../core/panel/guess/guess.ts';
import { guessesIn, roomGuesses, toldGuesses } from '../../../core/panel/guess/room.ts';

const pour = pourId('one');
const ages = (...all: readonly number[]): Guess[] => all.map((age) => ({ age }));
const sheet = { age: Array.from({ length: 41 }, (_, age) => age), style: ['rye', 'grain', 'malt', 'pot'] };

describe('[Q12] what a room guessed', () => {
  it('is nothing of fewer than three, not even how many', () => {
    expect(toldGuesses(pour, ages(8, 12), 5)).toEqual({ pour, counts: null, facts: [] });
  });

  it('holds only facts that three guessed, and no person', () => {
    const counted: Guess[] = [{ age: 12, style: 'rye' }, { age: 8 }, { age: 12, style: 'malt', sure: 75 }];
    expect(toldGuesses(pour, counted, 4)).toEqual({
      pour,
      counts: { counted: 3, of: 4 },
      facts: [
        {
          fact: 'age',
          spread: [
            { value: 8, guests: 1 },
            { value: 12, guests: 2 },
          ],
        },
      ],
    });
  });

  it('comes back guess by guess', () => {
    const [age] = toldGuesses(pour, ages(12, 3, 12, 40), 4).facts;
    expect(age && guessesIn(age)).toEqual([3, 12, 12, 40]);
  });

  it('stands beside what is known now: facts that were mended are judged by, unknown ones left out', () => {
    const told = toldGuesses(pour, ages(10, 12, 12), 3);
    const [at12] = roomGuesses(told, { age: 12 }, sheet, []);
    const [at30] = roomGuesses(told, { age: 30 }, sheet, []);
    expect(at12).toMatchObject({ truth: 12, guests: 3, nearest: [] });
    expect(at12?.chance).toBeLessThan(at30?.chance ?? 0);
    expect(roomGuesses(told, { style: 'rye' }, sheet, [])).toEqual([]);
  });

  it('names the nearest who agreed, but never so that one or two others could be told apart', () => {
    const named = (...all: readonly number[]) =>
      all.map((age, at) => ({ guess: { age }, name: ['Ada', 'Ben'][at] ?? 'Cleo' }));
    const nearest = (counted: readonly number[], agreed: readonly number[]) =>
      roomGuesses(toldGuesses(pour, ages(...counted), 9), { age: 12 }, sheet, named(...agreed))[0]?.nearest;
    expect(nearest([12, 20, 5, 9], [12])).toEqual(['Ada']);
    expect(nearest([12, 20, 5], [12])).toEqual([]);
    expect(nearest([12, 12, 12], [12, 12, 12])).toEqual(['Ada', 'Ben', 'Cleo']);
    // Who agreed and was not the nearest is not named either.
    expect(nearest([12, 20, 5, 9], [20])).toEqual([]);
  });
});
