import { type ReadonlySignal, signal } from '@preact/signals';
import type { HostAsk } from '../../shared/wire/commands.ts';
import type { FailureCode } from '../api.ts';

/** What the room answers to; the follower, or a stand-in. */
export type AskRoom = (
  ask: HostAsk,
) => Promise<{ readonly ok: true } | { readonly ok: false; readonly code: FailureCode }>;

export interface Asking {
  /** Kinds of asks that wait for their answer: their buttons take no second press meanwhile. */
  readonly waiting: ReadonlySignal<ReadonlySet<HostAsk['type']>>;
  /** Answers whether it was done. A second ask of a kind that still waits is not sent. */
  ask(ask: HostAsk): Promise<boolean>;
}

interface AskingOptions {
  readonly send: AskRoom;
  /** Told of every refusal, but for `moved-on`: another device or the clock was faster, and the screen shows it. */
  readonly onRefusal: (code: FailureCode) => void;
  /**
   * Ms that an ask counts as waiting at least. A nervous thumb taps twice within a third of a second; the room has
   * often moved by then, so that the second tap would name the next cue and skip it.
   */
  readonly settle?: number;
  readonly pause?: (ms: number) => Promise<void>;
}

export const settleMs = 450;

const realPause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

export function createAsking({
  send,
  onRefusal,
  settle = settleMs,
  pause = realPause,
}: AskingOptions): Asking {
  const waiting = signal<ReadonlySet<HostAsk['type']>>(new Set());
  return {
    waiting,
    async ask(ask) {
      if (waiting.peek().has(ask.type)) return false;
      waiting.value = new Set([...waiting.peek(), ask.type]);
      const settled = pause(settle);
      const answer = await send(ask);
      void settled.then(() => {
        waiting.value = new Set([...waiting.peek()].filter((type) => type !== ask.type));
      });
      if (!answer.ok && answer.code !== 'moved-on') onRefusal(answer.code);
      return answer.ok;
    },
  };
}
