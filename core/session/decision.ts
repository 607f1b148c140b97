import type { SessionRefusalCode } from './command.ts';
import type { SessionEvent } from './event.ts';

/** What came of a command: what happened, or why nothing did. */
export type Decision =
  | { readonly ok: true; readonly events: readonly SessionEvent[] }
  | { readonly ok: false; readonly code: SessionRefusalCode };

export const happened = (...events: readonly SessionEvent[]): Decision => ({ ok: true, events });
export const refused = (code: SessionRefusalCode): Decision => ({ ok: false, code });
