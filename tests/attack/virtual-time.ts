interface Alarm {
  readonly when: number;
  readonly order: number;
  readonly run: () => void;
  cancelled: boolean;
}

/**
 * Time that passes from one event to the next, as fast as the machine can: a queue of what is to happen, in order of
 * time and, at the same time, of asking. After each event everything that hangs on it settles.
 */
export class VirtualTime {
  /** Ms since the beginning; not a whole number. */
  now = 0;
  readonly #turns: number;
  #asked = 0;
  /** A binary heap, the earliest at its root. */
  readonly #heap: Alarm[] = [];

  /** @param turns of the event loop until all is settled: one for each time that what runs waits for the next itself */
  constructor(turns = 1) {
    this.#turns = turns;
  }

  /** Runs `run` in `ms` from now; answers with what cancels it. */
  after = (ms: number, run: () => void): (() => void) => {
    const alarm: Alarm = { when: this.now + Math.max(0, ms), order: this.#asked, run, cancelled: false };
    this.#asked += 1;
    this.#push(alarm);
    return () => {
      alarm.cancelled = true;
    };
  };

  /** Lets everything happen that is to happen within `ms`. */
  async pass(ms: number): Promise<void> {
    const end = this.now + ms;
    await this.#settled();
    for (;;) {
      const next = this.#heap[0];
      if (next === undefined || next.when > end) break;
      this.#pop();
      if (next.cancelled) continue;
      this.now = next.when;
      next.run();
      await this.#settled();
    }
    this.now = end;
  }

  async #settled(): Promise<void> {
    for (let turn = 0; turn < this.#turns; turn += 1) await settled();
  }

  #push(alarm: Alarm): void {
    const heap = this.#heap;
    heap.push(alarm);
    let at = heap.length - 1;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (!this.#swapIfEarlier(at, parent)) break;
      at = parent;
    }
  }

  #pop(): void {
    const heap = this.#heap;
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return;
    heap[0] = last;
    let at = 0;
    for (;;) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      const child = right < heap.length && earlier(heap[right], heap[left]) ? right : left;
      if (child >= heap.length || !this.#swapIfEarlier(child, at)) return;
      at = child;
    }
  }

  #swapIfEarlier(child: number, parent: number): boolean {
    const [low, high] = [this.#heap[child], this.#heap[parent]];
    if (low === undefined || high === undefined || !earlier(low, high)) return false;
    this.#heap[parent] = low;
    this.#heap[child] = high;
    return true;
  }
}

const earlier = (a: Alarm | undefined, b: Alarm | undefined): boolean =>
  a !== undefined && b !== undefined && (a.when < b.when || (a.when === b.when && a.order < b.order));

/** A turn of the event loop comes only after all promises that can settle have settled. */
const settled = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
