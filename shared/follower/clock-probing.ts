import type { After } from './timer.ts';

/**
 * When a device probes the server's clock: in quick succession after connecting and after waking, so that the first
 * change of cue is near; spread over the minute that follows, so that the mean is good on a poor network; and from then
 * on so rarely that it costs nothing, but often enough to follow the drift of two clocks. While a cue runs a line that
 * has died must be noticed sooner.
 */
const quick = { count: 8, every: 150 };
const spread = { count: 40, every: 1500 };
const steady = 8000;
const steadyWhileRunning = 2000;

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
  /** Nobody answered, twice, and nothing else came: the connection only looks open. Probing has stopped. */
  readonly onSilence: () => void;
  readonly after: After;
}

export function createProbing({ probe, cueRuns, onSilence, after }: ProbingOptions): Probing {
  /** One chain of probes at a time: one that still waits for its answer ends with it when a new one has begun. */
  let chain = 0;
  let signs = 0;
  let cancel: () => void = () => undefined;

  /** Ms to wait after the `count`th probe, counted from 1. */
  function pauseAfter(count: number): number {
    if (count < quick.count) return quick.every;
    if (count < quick.count + spread.count) return spread.every;
    return cueRuns() ? steadyWhileRunning : steady;
  }

  /** @param missed the one before was not answered */
  async function once(mine: number, count: number, within?: number, missed = false): Promise<void> {
    const before = signs;
    const answered = await probe(within);
    if (mine !== chain) return;
    if (answered || signs !== before) {
      cancel = after(pauseAfter(count), () => void once(mine, count + 1));
    } else if (missed) onSilence();
    else void once(mine, count + 1, within, true);
  }

  const stop = (): void => {
    chain += 1;
    cancel();
  };
  return {
    start(firstWithin) {
      stop();
      void once(chain, 1, firstWithin);
    },
    heard() {
      signs += 1;
    },
    stop,
  };
}
