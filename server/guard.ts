import type { Clock } from './clock.ts';

export type OnFault = (error: unknown) => void;

/**
 * The same function, but nothing that goes wrong in it, at once or later, leaves it: `onFault` is told instead, with the same
 * `this`. Every handler of a socket and every alarm runs in one, so that none can end the process.
 */
export function guarded<This, Args extends readonly unknown[]>(
  run: (this: This, ...args: Args) => unknown,
  onFault: (this: This, error: unknown) => void,
): (this: This, ...args: Args) => void {
  return function (this: This, ...args) {
    try {
      const running = run.call(this, ...args);
      if (running instanceof Promise) running.catch((error: unknown) => onFault.call(this, error));
    } catch (error) {
      onFault.call(this, error);
    }
  };
}

/** The same clock, whose alarms are guarded. */
export const guardedClock = (clock: Clock, onFault: OnFault): Clock => ({
  now: () => clock.now(),
  at: (when, run) => clock.at(when, guarded(run, onFault)),
  notBefore: (moment) => guardedClock(clock.notBefore(moment), onFault),
});

/** For the log: what kind of fault it was, and never a word of what was being handled. */
export const reasonOf = (error: unknown): string => (error instanceof Error ? error.name : 'unknown');
