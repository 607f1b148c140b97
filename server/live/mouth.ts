/** Whether a process may say anything now, and when it may again. */
export interface Leave {
  holds(): boolean;
  /** Resolves once it holds; never, where it does not any more. */
  held(): Promise<void>;
}

/** More than a whole roomful is told in a minute without a database. */
const mostWaiting = 20_000;

/**
 * Says nothing while another process may have what is conducted here, and all of it afterwards, in its order: whoever missed
 * one change would show all that follow wrong. What has gone to another meanwhile has no lines here any more.
 */
export class Mouth {
  readonly #leave: Leave;
  readonly #giveUp: () => void;
  #waiting: (() => void)[] = [];

  /** @param giveUp when too much waits: lets all lines go, so that nobody misses a part */
  constructor(leave: Leave, giveUp: () => void) {
    this.#leave = leave;
    this.#giveUp = giveUp;
  }

  get open(): boolean {
    return this.#waiting.length === 0 && this.#leave.holds();
  }

  say(run: () => void): void {
    if (this.open) {
      run();
      return;
    }
    this.#waiting.push(run);
    if (this.#waiting.length === 1) void this.#leave.held().then(() => this.#sayAll());
    if (this.#waiting.length <= mostWaiting) return;
    // One stays, so that what comes before it is held waits behind it.
    this.#waiting = [() => undefined];
    this.#giveUp();
  }

  #sayAll(): void {
    const all = this.#waiting;
    this.#waiting = [];
    for (const each of all) each();
  }
}
