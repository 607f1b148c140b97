interface Waiting {
  readonly lane: string | undefined;
  readonly run: () => Promise<void>;
}

/** As many as are committed together: what comes next waits for these, the tap of another evening too. */
const together = 16;

/**
 * Runs tasks in the order in which they came, but for those that go first: the host's hand does not wait behind what a
 * roomful of guests has sent. A task without a lane runs alone. Neighbours in the queue that are in different lanes may
 * run together, so that the store can commit them together; one lane never overtakes itself.
 */
export class SerialQueue {
  #first: Waiting[] = [];
  #waiting: Waiting[] = [];
  #running = false;
  #idle: Array<() => void> = [];

  get busy(): boolean {
    return this.#running;
  }

  add<Result>(task: () => Promise<Result> | Result, lane?: string): Promise<Result> {
    return this.#lineUp(this.#waiting, task, lane);
  }

  /** Before all that waits but what goes first itself; it runs alone. */
  addFirst<Result>(task: () => Promise<Result> | Result): Promise<Result> {
    return this.#lineUp(this.#first, task, undefined);
  }

  #lineUp<Result>(
    line: Waiting[],
    task: () => Promise<Result> | Result,
    lane: string | undefined,
  ): Promise<Result> {
    return new Promise<Result>((resolve, reject) => {
      const run = async () => {
        try {
          resolve(await task());
        } catch (error) {
          reject(error);
        }
      };
      line.push({ lane, run });
      void this.#drain();
    });
  }

  /** Settles when everything that stands in the queue has been done. */
  idle(): Promise<void> {
    return this.#running ? new Promise((resolve) => this.#idle.push(resolve)) : Promise.resolve();
  }

  async #drain(): Promise<void> {
    if (this.#running) return;
    this.#running = true;
    // Let everything that arrives in this turn line up first: that is what can be committed together.
    await Promise.resolve();
    while (this.#first.length + this.#waiting.length > 0)
      await Promise.all(this.#next().map((task) => task.run()));
    this.#running = false;
    const idle = this.#idle;
    this.#idle = [];
    for (const tell of idle) tell();
  }

  /** The first task, with those right behind it that may run beside it. */
  #next(): Waiting[] {
    if (this.#first.length > 0) return this.#first.splice(0, 1);
    const lanes = new Set<string>();
    let count = 0;
    for (const { lane } of this.#waiting) {
      if (lane === undefined || lanes.has(lane) || count === together) break;
      lanes.add(lane);
      count += 1;
    }
    return this.#waiting.splice(0, Math.max(1, count));
  }
}
