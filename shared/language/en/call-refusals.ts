import type { RefusalCode } from '../../wire/protocol.ts';

/** What the evening's call may refuse, apart: the page that shows the call brings it along. */
export const callRefusals = {
  'not-in-call': 'This device is not in the call; join it first.',
  'no-such-peer': 'That device is not in the call any more; there is nothing to do.',
  'call-full': 'Eight devices are in the call, and it holds no more; use the link to the other call.',
  'call-from-home': 'The call is for guests at home; if you are one, say so under “My seat”.',
} satisfies Partial<Record<RefusalCode, string>>;

export type CallRefusals = Readonly<Record<keyof typeof callRefusals, string>>;
