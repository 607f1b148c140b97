import type { OnFault } from '../guard.ts';
import { StoreFailure } from '../store/store.ts';
import { SerialQueue } from './serial-queue.ts';

/**
 * The queue of one session. What goes wrong in a task besides the store is a fault, told before the asker is refused; once
 * the session is ended, what still waits is refused without being begun.
 */
export class SessionQueue {
  readonly #queue = new SerialQueue();
  readonly #onFault: OnFault;
  #ended = false;

  constructor(onFault: OnFault) {
    this.#onFault = onFault;
  }

  get busy(): boolean {
    return this.#queue.busy;
  }

  add<Result>(task: () => Promise<Result> | Result, lane?: string): Promise<Result> {
    return this.#watched(this.#queue.add(this.#unlessEnded(task), lane));
  }

  /** Before all that waits but what goes first itself; it runs alone. */
  addFirst<Result>(task: () => Promise<Result> | Result): Promise<Result> {
    return this.#watched(this.#queue.addFirst(this.#unlessEnded(task)));
  }

  #unlessEnded<Result>(task: () => Promise<Result> | Result): () => Promise<Result> | Result {
    return () => {
      if (this.#ended) throw new StoreFailure('This evening is being read again.');
      return task();
    };
  }

  async #watched<Result>(running: Promise<Result>): Promise<Result> {
    try {
      return await running;
    } catch (error) {
      if (!(error instanceof StoreFailure)) this.#onFault(error);
      throw error;
    }
  }

  end(): void {
    this.#ended = true;
  }

  idle(): Promise<void> {
    return this.#queue.idle();
  }
}
