import type { SessionEvent } from '../../core/session/event.ts';
import { evolveAll } from '../../core/session/evolve.ts';
import type { Session } from '../../core/session/state.ts';

/** One event at a time, for tests that look between two. */
export const evolve = (session: Session, event: SessionEvent): Session => evolveAll(session, [event]);
