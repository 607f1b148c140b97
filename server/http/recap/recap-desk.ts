import type { Worker } from 'node:worker_threads';
import { openThread } from '../../thread.ts';
import { Refused } from '../answers.ts';
import type { RecapMaterial } from './recap-text.ts';
import type { RecapReply } from './recap-worker.ts';

/** Who comes after so many waits in vain for longer than a browser does. */
export const mostWaiting = 20;

export const busy = 'Many recaps are being made right now; ask for this one again in a minute.';

interface Waiting {
  resolve(text: string): void;
  reject(error: Error): void;
}

/**
 * Has recaps made off the loop that serves every evening: the statistics of two hundred guests and nine pours take half a
 * second, in which no tap of another evening would be answered. One thread, begun when it is first needed.
 */
export class RecapDesk {
  #worker: Worker | undefined;
  #waiting: Waiting[] = [];

  /** Rejects with `Refused` while too many wait, and with an error when the recap cannot be made. */
  make(material: RecapMaterial): Promise<string> {
    if (this.#waiting.length >= mostWaiting) return Promise.reject(new Refused('too-fast', busy));
    this.#worker ??= this.#begin();
    const worker = this.#worker;
    return new Promise((resolve, reject) => {
      this.#waiting.push({ resolve, reject });
      worker.postMessage(material);
    });
  }

  async stop(): Promise<void> {
    await this.#worker?.terminate();
  }

  #begin(): Worker {
    const worker = openThread(import.meta.url, 'recap-worker');
    // It waits for work, and must not keep the process alive for that.
    worker.unref();
    worker.on('message', (reply: RecapReply) => {
      const asked = this.#waiting.shift();
      if ('text' in reply) asked?.resolve(reply.text);
      else asked?.reject(new Error(`A recap could not be made: ${reply.failed}.`));
    });
    worker.on('error', () => undefined);
    // The next one who asks gets another thread.
    worker.on('exit', () => {
      this.#worker = undefined;
      for (const { reject } of this.#waiting.splice(0)) reject(new Error('The thread of the recaps ended.'));
    });
    return worker;
  }
}
