import { type ReadonlySignal, signal } from '@preact/signals';
import type { FailureCode } from '../../shared/wire/answer.ts';
import type { HostAsk } from '../../shared/wire/commands.ts';

/** What the room answers to; the follower, or a stand-in. */
type AskRoom = (
  ask: HostAsk,
) => Promise<{ readonly ok: true } | { readonly ok: false; readonly code: FailureCode }>;

export interface CommandsUnderWay {
  /** Kinds of asks that wait for their answer: their buttons take no second press meanwhile. */
  readonly waiting: ReadonlySignal<ReadonlySet<HostAsk['type']>>;
  /** Answers whether it was done. The same ask is not sent again while it waits. */
  ask(ask: HostAsk): Promise<boolean>;
}

interface CommandsUnderWayOptions {
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

/** A second step within a moment is a thumb that has tapped twice, though by then it leaves another cue. */
const sameAs = (ask: HostAsk): string =>
  ask.type === 'Advance' || ask.type === 'GoBack' ? ask.type : JSON.stringify(ask);

const realPause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

export function createCommandsUnderWay({
  send,
  onRefusal,
  settle = settleMs,
  pause = realPause,
}: CommandsUnderWayOptions): CommandsUnderWay {
  const waiting = signal<ReadonlySet<HostAsk['type']>>(new Set());
  const sent = new Map<string, HostAsk['type']>();
  const show = (): void => {
    waiting.value = new Set(sent.values());
  };
  return {
    waiting,
    async ask(ask) {
      const what = sameAs(ask);
      if (sent.has(what)) return false;
      sent.set(what, ask.type);
      show();
      const settled = pause(settle);
      const answer = await send(ask);
      void settled.then(() => {
        sent.delete(what);
        show();
      });
      if (!answer.ok && answer.code !== 'moved-on') onRefusal(answer.code);
      return answer.ok;
    },
  };
}
