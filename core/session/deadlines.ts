import { type EpochMs, later, toMs } from '../units.ts';
import type { ClockCommand } from './command.ts';
import { endingNow } from './position.ts';
import { cueNow, type Session } from './state.ts';

export interface Deadline {
  readonly at: EpochMs;
  readonly ask: ClockCommand;
}

/** What the clock will ask for if nothing else happens. A gate and a held clock ask for nothing [P2, P4]. */
export function deadlinesOf(session: Session): Deadline[] {
  if (session.status !== 'under-way' || session.clock.kind === 'held') return [];
  const cue = cueNow(session);
  if (cue.gate) return [];
  const ends: Deadline = { at: session.clock.endsAt, ask: { type: 'ExpireCue', cue: cue.id } };
  if (endingNow(session) !== 'room') return [ends];
  return [ends, { at: later(session.enteredAt, toMs(cue.floor)), ask: { type: 'WeighRoom', cue: cue.id } }];
}
