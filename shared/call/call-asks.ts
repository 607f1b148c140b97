import type { FollowerSocket } from '../follower/line.ts';
import type { CallAsk } from '../wire/call.ts';
import type { CallAnswer } from '../wire/protocol.ts';

export type CallAsked = CallAnswer | { readonly ok: false; readonly code: 'no-answer' };

const answerWithin = 5000;
/** Ms until what must be known is said again. */
const againAfter = 1000;

interface CallAsks {
  ask(asked: CallAsk): Promise<CallAsked>;
  /** Asks until it is answered, also where too much was asked at once, as long as `wanted` and the line stands. */
  insist(asked: CallAsk, wanted: () => boolean): Promise<CallAsked>;
}

/** What a device asks the server about its call. */
export function callAsks(socket: FollowerSocket): CallAsks {
  const ask = async (asked: CallAsk): Promise<CallAsked> => {
    const answer = await socket
      .timeout(answerWithin)
      .emitWithAck('call:ask', asked)
      .catch(() => undefined);
    return answer ?? { ok: false, code: 'no-answer' };
  };
  return {
    ask,
    async insist(asked, wanted) {
      for (;;) {
        const answer = await ask(asked);
        if (answer.ok || (answer.code !== 'too-fast' && answer.code !== 'no-answer')) return answer;
        await new Promise((resolve) => setTimeout(resolve, againAfter));
        if (!socket.connected || !wanted()) return answer;
      }
    },
  };
}
