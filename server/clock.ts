import { type EpochMs, epochMs } from '../core/units.ts';

/** The one source of time of the server. Injected, so that tests and rehearsals turn the hands themselves. */
export interface Clock {
  /** For stamps and for showing; never behind what it has said before, whoever sets the machine's clock back. */
  now(): EpochMs;
  /** Runs once at `when`, or as soon as possible when that has passed; never earlier. Returns what cancels it. */
  at(when: EpochMs, run: () => void): Cancel;
  /** The same time, but never behind this moment: for an evening whose last stamp the machine's clock has fallen behind. */
  notBefore(moment: EpochMs): Clock;
}
export type Cancel = () => void;

/** The two clocks of a machine, in ms, and what waits by the steady one. */
export interface MachineTime {
  /** Since 1970. Anybody may set it, and it is set by the network. */
  wall(): number;
  /** Since any moment. Never set, but it may stand still while the machine sleeps. */
  steady(): number;
  /** Runs once in so many ms, or a fraction of one earlier; it does not keep a process alive. */
  after(ms: number, run: () => void): Cancel;
}

export const machineTime: MachineTime = {
  wall: () => Date.now(),
  steady: () => performance.now(),
  after(ms, run) {
    const timer = setTimeout(run, ms);
    timer.unref();
    return () => clearTimeout(timer);
  },
};

/** No wait is longer in one piece, so that what fell due while the machine slept is seen soon after it woke, in ms. */
const longestWait = 10_000;

/** When the wall clock is this far ahead, the machine has slept or been set, and it is believed at once; in ms. */
const slept = 2000;

/**
 * How much faster or slower than the steady clock it may go until it says the same as the wall clock: what adjtime(3)
 * of the BSDs and Linux's kernel discipline use, 500 parts per million. An hour behind is thus never made good by a
 * jump back, and a phone's countdown never jumps for a correction by the network.
 */
const slew = 500e-6;

/**
 * Goes with the steady clock, from where the wall clock stood: what waits waits as long as it was told to, also when
 * somebody sets the wall clock back by an hour. It is only ever put forward. Its timers do not keep a process alive.
 */
export function steadyClock(time: MachineTime = machineTime, notBefore = 0): Clock {
  let said = Math.max(time.wall(), notBefore);
  let lookedAt = time.steady();

  const now = (): EpochMs => {
    const steady = time.steady();
    const passed = Math.max(0, steady - lookedAt);
    lookedAt = Math.max(lookedAt, steady);
    const ahead = time.wall() - (said + passed);
    const put = ahead > slept ? ahead : Math.min(passed * slew, Math.max(-passed * slew, ahead));
    said += passed + put;
    return epochMs(Math.floor(said));
  };

  return {
    now,
    at(when, run) {
      let cancel: Cancel | undefined;
      const wait = () => {
        // A timer of Node goes by the steady clock too, and may ring a fraction of a millisecond early.
        const left = Math.min(Math.max(0, when - now()), longestWait);
        cancel = time.after(left, () => (now() < when ? wait() : run()));
      };
      wait();
      return () => cancel?.();
    },
    notBefore: (moment) => steadyClock(time, moment),
  };
}
