import { type EpochMs, epochMs } from '../../../core/units.ts';
import type { Clock } from '../../../server/clock.ts';
import { clockAhead } from '../../support/clock-ahead.ts';

interface Alarm {
  readonly when: number;
  readonly run: () => void;
}

/** A clock whose hands are turned by the test. Alarms ring in order, at their own time. */
export class ManualClock implements Clock {
  #now: number;
  #alarms: Alarm[] = [];

  constructor(now = Date.UTC(2031, 4, 9, 19)) {
    this.#now = now;
  }

  now(): EpochMs {
    return epochMs(this.#now);
  }

  at(when: EpochMs, run: () => void): () => void {
    const alarm = { when, run };
    this.#alarms.push(alarm);
    return () => {
      this.#alarms = this.#alarms.filter((each) => each !== alarm);
    };
  }

  notBefore(moment: EpochMs): Clock {
    return clockAhead(this, moment);
  }

  /** As a machine does: nothing rings before it is awake again and the hands are turned. */
  sleep(ms: number): void {
    this.#now += ms;
  }

  /** Turns the hands on and lets everything that follows from each alarm settle before the next. */
  async advance(ms: number): Promise<void> {
    const end = this.#now + ms;
    for (;;) {
      const due = this.#alarms.filter(({ when }) => when <= end).sort((a, b) => a.when - b.when)[0];
      if (due === undefined) break;
      this.#alarms = this.#alarms.filter((each) => each !== due);
      this.#now = Math.max(this.#now, due.when);
      due.run();
      await turns();
    }
    this.#now = end;
    await turns();
  }
}

/** Lets the store commit and the queues drain: a few turns of the event loop, no waiting. */
export async function turns(count = 8): Promise<void> {
  for (let turn = 0; turn < count; turn += 1) await new Promise((resolve) => setImmediate(resolve));
}
