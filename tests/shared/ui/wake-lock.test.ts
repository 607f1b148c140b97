import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepAwake, wakeLockWorks } from '../../../shared/ui/wake-lock.ts';

let held: number;
let asked: number;
let refuses: boolean;
let shown: (() => void) | undefined;
const page = {
  visibilityState: 'visible',
  addEventListener: (_: string, run: () => void) => {
    shown = run;
  },
  removeEventListener: () => {
    shown = undefined;
  },
};
const settle = () => new Promise<void>((resolve) => setImmediate(resolve));

beforeEach(() => {
  [held, asked, refuses, shown] = [0, 0, false, undefined];
  page.visibilityState = 'visible';
  vi.stubGlobal('document', page);
  vi.stubGlobal('navigator', {
    wakeLock: {
      request: async () => {
        asked += 1;
        if (refuses) throw new Error('The battery is low.');
        held += 1;
        return {
          release: async () => {
            held -= 1;
          },
        };
      },
    },
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a screen that stays on', () => {
  it('is asked for at once, again when the page is come back to, and let go at the end', async () => {
    const letGo = keepAwake();
    await settle();
    expect(held).toBe(1);
    // A hidden page loses the lock by itself, and may not ask for another.
    held = 0;
    page.visibilityState = 'hidden';
    shown?.();
    await settle();
    expect(asked).toBe(1);
    page.visibilityState = 'visible';
    shown?.();
    await settle();
    expect([asked, held]).toEqual([2, 1]);
    letGo();
    await settle();
    expect([held, shown]).toEqual([0, undefined]);
  });

  it('is let go also when it is granted after the page was left', async () => {
    keepAwake()();
    await settle();
    expect(held).toBe(0);
  });

  it('is no trouble where it is refused or unknown', async () => {
    refuses = true;
    const letGo = keepAwake();
    await settle();
    letGo();
    vi.stubGlobal('navigator', {});
    expect(wakeLockWorks()).toBe(false);
    keepAwake()();
  });

  it('is not believed on the home screen of iOS before 18.4, where it does nothing', () => {
    const phone = (version: string, standalone: boolean) => ({
      userAgent: `Mozilla/5.0 (iPhone; CPU iPhone OS ${version} like Mac OS X) AppleWebKit/605.1.15`,
      standalone,
    });
    expect([
      wakeLockWorks(phone('17_6', true)),
      wakeLockWorks(phone('18_3_1', true)),
      wakeLockWorks(phone('18_4', true)),
      wakeLockWorks(phone('18_10', true)),
      wakeLockWorks(phone('17_6', false)),
    ]).toEqual([false, false, true, true, true]);
  });
});
