import type { Worker } from 'node:worker_threads';
import { openThread } from '../../thread.ts';
import { Diverged } from '../store.ts';
import type { Asked, Done, Task, ThreadGiven } from './task.ts';

interface Waiting {
  readonly done: () => void;
  readonly fail: (error: Error) => void;
}

/** The thread that writes, begun when it is first needed. */
export class CommitThread {
  readonly #given: ThreadGiven;
  readonly #waiting = new Map<number, Waiting>();
  #worker: Worker | undefined;
  #asked = 0;

  constructor(given: ThreadGiven) {
    this.#given = given;
  }

  /** Resolves when it is on disk. Rejects with the system's error when nothing of it is, and with `Diverged` when nobody knows. */
  ask(task: Task): Promise<void> {
    this.#worker ??= this.#begin();
    const worker = this.#worker;
    this.#asked += 1;
    const asked: Asked = { id: this.#asked, task };
    return new Promise((done, fail) => {
      this.#waiting.set(asked.id, { done, fail });
      // A process stays for what is on its way to disk, and not for a thread that waits for work.
      worker.ref();
      worker.postMessage(asked);
    });
  }

  async close(): Promise<void> {
    if (this.#worker === undefined) return;
    await this.ask({ do: 'close' });
    await this.#worker?.terminate();
  }

  #begin(): Worker {
    const worker = openThread(import.meta.url, 'commit-worker', this.#given);
    worker.on('message', ({ id, failed }: Done) => {
      const asker = this.#waiting.get(id);
      this.#waiting.delete(id);
      if (this.#waiting.size === 0) worker.unref();
      if (failed === undefined) asker?.done();
      else asker?.fail(Object.assign(new Error(failed.message), { code: failed.code }));
    });
    let why: unknown;
    worker.on('error', (error) => {
      why = error;
    });
    // Whoever asks next gets another thread, and reads what became of this one's last task.
    worker.on('exit', () => {
      this.#worker = undefined;
      const ended = new Diverged('The thread that writes the store has ended.', { cause: why });
      for (const { fail } of this.#waiting.values()) fail(ended);
      this.#waiting.clear();
    });
    return worker;
  }
}
