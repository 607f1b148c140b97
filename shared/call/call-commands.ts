import type { FollowerSocket } from '../follower/line.ts';
import type { CallCommand } from '../wire/call.ts';
import type { CallAnswer } from '../wire/protocol.ts';

export type CallOutcome = CallAnswer | { readonly ok: false; readonly code: 'no-answer' };

const answerWithin = 5000;
/** Ms until what must be known is said again. */
const againAfter = 1000;

interface CallCommands {
  send(command: CallCommand): Promise<CallOutcome>;
  /** Sends it until it is answered, also where too much was sent at once, as long as `wanted` and the line stands. */
  insist(command: CallCommand, wanted: () => boolean): Promise<CallOutcome>;
}

/** What a device wants of the server about its call. */
export function callCommands(socket: FollowerSocket): CallCommands {
  const send = async (command: CallCommand): Promise<CallOutcome> => {
    const answer = await socket
      .timeout(answerWithin)
      .emitWithAck('call:ask', command)
      .catch(() => undefined);
    return answer ?? { ok: false, code: 'no-answer' };
  };
  return {
    send,
    async insist(command, wanted) {
      for (;;) {
        const answer = await send(command);
        if (answer.ok || (answer.code !== 'too-fast' && answer.code !== 'no-answer')) return answer;
        await new Promise((resolve) => setTimeout(resolve, againAfter));
        if (!socket.connected || !wanted()) return answer;
      }
    },
  };
}
