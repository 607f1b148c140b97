import type { RefusalCode } from './protocol.ts';

/** Nobody answered within the time a person would wait. Whether it was done is not known. */
export interface NoAnswer {
  readonly ok: false;
  readonly code: 'no-answer';
}

/** Why something could not be had; `no-answer` is a server that is not there. */
export type FailureCode = RefusalCode | NoAnswer['code'];

/** What a page was answered over HTTP. */
export type HttpAnswer<Body> =
  | { readonly ok: true; readonly body: Body }
  | { readonly ok: false; readonly code: FailureCode };

/** Failures that pass by themselves: the same is worth sending again. The others need somebody. */
export const passesByItself = (code: FailureCode): boolean =>
  code === 'no-answer' || code === 'not-stored' || code === 'too-fast';
