import type { TastingId } from '../../core/ids.ts';
import { eventSchema, type SessionEvent } from '../../core/session/event.ts';
import { linkOf } from './chain.ts';
import { SetAside } from './set-aside.ts';
import { eventOfToday } from './upcasts.ts';

export interface StoredEventRow {
  readonly seq: number;
  readonly event: string;
  readonly digest: string;
}

/**
 * The log of one session, in order, as today's events. Throws `SetAside` with the number of the first event that is
 * missing, changed or unreadable. That its end is missing cannot be seen from here: see `SessionLog.acknowledged`.
 */
export function eventsIn(tasting: TastingId, rows: readonly StoredEventRow[]): SessionEvent[] {
  let before: string = tasting;
  return rows.map(({ seq, event, digest }, index) => {
    const number = index + 1;
    if (seq !== number) throw new SetAside(tasting, { kind: 'event-missing', event: number });
    if (linkOf(before, seq, event) !== digest)
      throw new SetAside(tasting, { kind: 'event-altered', event: number });
    before = digest;
    return eventIn(tasting, number, event);
  });
}

function eventIn(tasting: TastingId, number: number, text: string): SessionEvent {
  try {
    return eventSchema.parse(eventOfToday(JSON.parse(text)));
  } catch (error) {
    throw new SetAside(tasting, { kind: 'event-unreadable', event: number }, { cause: error });
  }
}
