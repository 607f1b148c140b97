import type { After } from './timer.ts';

/**
 * When a device probes the server's clock: in quick succession after connecting and after waking, so that the first
 * change of cue is near; spread over the minute that follows, so that the mean is good on a poor network; then as
 * often as is needed to learn how fast the two clocks part; and once that is known so rarely that it costs next to nothing.
 */
const quickOnes = 8;
const quickEvery = 150;
const spreadOnes = 40;
const spreadEvery = 1500;
/** Ms from the beginning in which the drift is learned. */
const driftFor = 360_000;
const driftEvery = 15_000;
const laterEvery = 30_000;
/**
 * Ms in which nothing came, whatever it was, after which the line is asked whether it lives. While a cue runs a line that
 * has died must be noticed sooner: there the server says a little before that time that it lives.
 */
const quiet = 8000;
const quietWhileRunning = 2000;
/** Something comes, but no answer: what is sent may only be slow, and has so many ms. */
const slowAnswer = 5000;
/** So many without an answer, one after another, whatever else came: nothing of what is sent arrives. */
const mostUnanswered = 3;

export interface Probing {
  /** Begins anew, with quick ones; the first is answered within this many ms or not at all. */
  start(firstWithin?: number): void;
  /** Something came from the server, whatever it was. */
  heard(): void;
  stop(): void;
}

export interface ProbingOptions {
  /** Sends one; false when nobody answered, within the usual time unless another is given in ms. */
  readonly probe: (within?: number) => Promise<boolean>;
  /** Whether a cue runs whose end the device must not miss. */
  readonly cueRuns: () => boolean;
  /** Nobody answers any more: the connection only looks open. Probing has stopped. */
  readonly onSilence: () => void;
  /** Ms on a clock that is never stepped. */
  readonly now: () => number;
  readonly after: After;
}

export function createProbing({ probe, cueRuns, onSilence, now, after }: ProbingOptions): Probing {
  /** One chain of probes at a time: one that still waits for its answer ends with it when a new one has begun. */
  let chain = 0;
  let signs = 0;
  let heardAt = 0;
  let startedAt = 0;
  let cancel: () => void = () => undefined;

  const heard = (): void => {
    signs += 1;
    heardAt = now();
  };

  /** When the next is due after the `count`th, counted from 1, which was answered at `answeredAt`. */
  function dueAt(count: number, answeredAt: number): number {
    if (count < quickOnes) return answeredAt + quickEvery;
    if (count < quickOnes + spreadOnes) return answeredAt + spreadEvery;
    const forTheClock = answeredAt - startedAt < driftFor ? driftEvery : laterEvery;
    return Math.min(answeredAt + forTheClock, heardAt + (cueRuns() ? quietWhileRunning : quiet));
  }

  function waitAfter(count: number, answeredAt: number): void {
    const mine = chain;
    cancel = after(Math.max(0, dueAt(count, answeredAt) - now()), () => {
      if (dueAt(count, answeredAt) > now()) waitAfter(count, answeredAt);
      else void once(mine, count + 1);
    });
  }

  /** @param unanswered how many of those just before were not answered */
  async function once(mine: number, count: number, within?: number, unanswered = 0): Promise<void> {
    const before = signs;
    const answered = await probe(within);
    if (mine !== chain) return;
    const silent = signs === before;
    if (answered) {
      heard();
      waitAfter(count, now());
    } else if (silent ? unanswered > 0 : unanswered + 1 >= mostUnanswered) onSilence();
    else void once(mine, count + 1, silent ? within : slowAnswer, unanswered + 1);
  }

  const stop = (): void => {
    chain += 1;
    cancel();
  };
  return {
    start(firstWithin) {
      stop();
      startedAt = now();
      void once(chain, 1, firstWithin);
    },
    heard,
    stop,
  };
}
