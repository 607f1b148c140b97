import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countdownFigures, crossedMark, timeLeft, untilNextBeat } from '../../../shared/ui/time-left.ts';

describe('countdown figures', () => {
  it.each([
    [120_000, '02:00'],
    [119_999, '02:00'],
    [119_000, '01:59'],
    [60_000, '01:00'],
    [1_000, '00:01'],
    [1, '00:01'],
    [0, '00:00'],
    [-999, '00:00'],
    [-1_000, '+00:01'],
    [-61_500, '+01:01'],
    [5_400_000, '90:00'],
    [6_000_000, '100:00'],
  ])('%i ms reads %s', (remaining, figures) => {
    expect(countdownFigures(remaining)).toBe(figures);
  });

  it('never goes up while time runs, and never skips a second when looked at each second', () => {
    const seconds = (figures: string): number => {
      const [minutes = 0, rest = 0] = figures.replace('+', '').split(':').map(Number);
      return (figures.startsWith('+') ? -1 : 1) * (minutes * 60 + rest);
    };
    fc.assert(
      fc.property(fc.integer({ min: 1_000, max: 7_200_000 }), (remaining) => {
        const before = seconds(countdownFigures(remaining));
        expect(before - seconds(countdownFigures(remaining - 1_000))).toBe(1);
      }),
    );
  });
});

describe('time left', () => {
  const running = { status: 'running', startsAt: 1_000, endsAt: 61_000 } as const;

  it('falls from the whole to nothing', () => {
    expect(timeLeft(running, 1_000)).toEqual({ phase: 'running', remaining: 60_000, share: 1 });
    expect(timeLeft(running, 46_000)).toEqual({ phase: 'running', remaining: 15_000, share: 0.25 });
    expect(timeLeft(running, 61_000)).toEqual({ phase: 'running', remaining: 0, share: 0 });
  });

  it('is full before the start, which lies a little ahead when a cue is announced', () => {
    expect(timeLeft(running, 700).share).toBe(1);
  });

  it('is overtime when the figures can show it', () => {
    expect(timeLeft(running, 61_999).phase).toBe('running');
    expect(timeLeft(running, 62_000)).toEqual({ phase: 'over', remaining: -1_000, share: 0 });
  });

  it('[P4] stands still while held, whatever the clock says', () => {
    const held = { status: 'held', remaining: 15_000, total: 60_000 } as const;
    expect(timeLeft(held, 0)).toEqual(timeLeft(held, 9_999_999));
    expect(timeLeft(held, 0)).toEqual({ phase: 'held', remaining: 15_000, share: 0.25 });
  });

  it('is empty where there never was any time', () => {
    expect(timeLeft({ status: 'running', startsAt: 5, endsAt: 5 }, 5).share).toBe(0);
  });
});

describe('the marks at which time is spoken', () => {
  it.each([
    [61_000, 60_000, 60],
    [60_000, 59_000, undefined],
    [60_500, 59_500, 60],
    [20_001, 20_000, 20],
    [1_000, 0, 0],
    [0, -1_000, undefined],
    [70_000, 15_000, 20],
    [70_000, -5_000, 0],
  ])('between %i and %i ms: %s', (before, after, mark) => {
    expect(crossedMark(before, after)).toBe(mark);
  });

  it('are each crossed once in a run', () => {
    const marks: (number | undefined)[] = [];
    for (let remaining = 90_000; remaining > -5_000; remaining -= 970) {
      marks.push(crossedMark(remaining, remaining - 970));
    }
    expect(marks.filter((mark) => mark !== undefined)).toEqual([60, 20, 0]);
  });
});

describe('beats', () => {
  it('fall on the anchor of the cue, before it and after it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e7, max: 1e7 }),
        fc.integer({ min: 1, max: 60_000 }),
        (ahead, period) => {
          const anchor = 1_700_000_000_123;
          const wait = untilNextBeat(anchor - ahead, anchor, period);
          expect(wait).toBeGreaterThan(0);
          expect(wait).toBeLessThanOrEqual(period);
          expect(Math.abs((ahead - wait) % period)).toBe(0);
        },
      ),
    );
  });
});
