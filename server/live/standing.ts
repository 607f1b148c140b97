import type { Session } from '../../core/session/state.ts';

/** How an evening stands, and the number of events behind it. */
export interface Standing {
  readonly session: Session;
  readonly version: number;
}
