import { type EpochMs, epochMs } from '../core/units.ts';

/** The one source of time of the server. Injected, so that tests and rehearsals turn the hands themselves. */
export interface Clock {
  now(): EpochMs;
  /** Runs once at `when`, or as soon as possible when that has passed; never earlier. Returns what cancels it. */
  at(when: EpochMs, run: () => void): Cancel;
}
export type Cancel = () => void;

/** `setTimeout` fires at once when asked for more than 2^31 - 1 ms, so that long waits are made of shorter ones. */
const longestWait = 2 ** 31 - 1;

/** The clock on the wall. Its timers do not keep a process alive. */
export const wallClock: Clock = {
  now: () => epochMs(Date.now()),
  at(when, run) {
    let timer: NodeJS.Timeout | undefined;
    const wait = () => {
      const left = when - Date.now();
      timer = setTimeout(
        () => (Date.now() < when ? wait() : run()),
        Math.min(Math.max(0, left), longestWait),
      );
      timer.unref();
    };
    wait();
    return () => clearTimeout(timer);
  },
};
