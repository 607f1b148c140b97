import { type ReadonlySignal, signal } from '@preact/signals';
import type { FailureCode } from '../../shared/wire/answer.ts';
import type { SentHostCommand } from '../../shared/wire/commands.ts';

/** What the room answers to; the follower, or a stand-in. */
type SendCommand = (
  command: SentHostCommand,
) => Promise<{ readonly ok: true } | { readonly ok: false; readonly code: FailureCode }>;

export interface CommandsUnderWay {
  /** Kinds of commands that wait for their answer: their buttons take no second press meanwhile. */
  readonly waiting: ReadonlySignal<ReadonlySet<SentHostCommand['type']>>;
  /** Answers whether it was done. The same command is not sent again while it waits. */
  send(command: SentHostCommand): Promise<boolean>;
}

interface CommandsUnderWayOptions {
  readonly send: SendCommand;
  /** Told of every refusal, but for `moved-on`: another device or the clock was faster, and the screen shows it. */
  readonly onRefusal: (code: FailureCode) => void;
  /**
   * Ms that a command counts as waiting at least. A nervous thumb taps twice within a third of a second; the room has
   * often moved by then, so that the second tap would name the next cue and skip it.
   */
  readonly settle?: number;
  readonly pause?: (ms: number) => Promise<void>;
}

export const settleMs = 450;

/** A second step within a moment is a thumb that has tapped twice, though by then it leaves another cue. */
const sameAs = (command: SentHostCommand): string =>
  command.type === 'Advance' || command.type === 'GoBack' ? command.type : JSON.stringify(command);

const realPause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

export function createCommandsUnderWay({
  send,
  onRefusal,
  settle = settleMs,
  pause = realPause,
}: CommandsUnderWayOptions): CommandsUnderWay {
  const waiting = signal<ReadonlySet<SentHostCommand['type']>>(new Set());
  const sent = new Map<string, SentHostCommand['type']>();
  const show = (): void => {
    waiting.value = new Set(sent.values());
  };
  return {
    waiting,
    async send(command) {
      const what = sameAs(command);
      if (sent.has(what)) return false;
      sent.set(what, command.type);
      show();
      const settled = pause(settle);
      const answer = await send(command);
      void settled.then(() => {
        sent.delete(what);
        show();
      });
      if (!answer.ok && answer.code !== 'moved-on') onRefusal(answer.code);
      return answer.ok;
    },
  };
}
