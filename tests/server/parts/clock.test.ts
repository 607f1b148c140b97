import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { epochMs } from '../../../core/units.ts';
import { wallClock } from '../../../server/clock.ts';

beforeEach(() => {
  vi.useFakeTimers({ now: 1_000_000 });
});
afterEach(() => {
  vi.useRealTimers();
});

const day = 24 * 3600 * 1000;

describe('the clock on the wall', () => {
  it('rings at its time and never before, also after weeks', () => {
    for (const wait of [1, 1000, 24 * day, 25 * day, 60 * day]) {
      const run = vi.fn();
      wallClock.at(epochMs(wallClock.now() + wait), run);
      vi.advanceTimersByTime(wait - 1);
      expect(run).not.toHaveBeenCalled();
      vi.advanceTimersByTime(1);
      expect(run).toHaveBeenCalledOnce();
    }
  });

  it('rings once for a time that has passed', () => {
    const run = vi.fn();
    wallClock.at(epochMs(5), run);
    vi.advanceTimersByTime(1);
    expect(run).toHaveBeenCalledOnce();
  });

  it('does not ring when it was cancelled, not even weeks later', () => {
    const run = vi.fn();
    const cancel = wallClock.at(epochMs(wallClock.now() + 60 * day), run);
    vi.advanceTimersByTime(40 * day);
    cancel();
    vi.advanceTimersByTime(40 * day);
    expect(run).not.toHaveBeenCalled();
  });
});
