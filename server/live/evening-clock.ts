import type { SessionEvent } from '../../core/session/event.ts';
import { between } from '../../core/units.ts';
import type { Clock } from '../clock.ts';
import { mostLead } from './lead.ts';

/** A cue takes effect a little after it was stamped; further ahead than that, a machine's clock has been set back. */
export function neverBehind(events: readonly SessionEvent[], clock: Clock): Clock {
  const last = events.findLast((event) => 'at' in event);
  if (last === undefined || !('at' in last)) return clock;
  return between(clock.now(), last.at) > mostLead ? clock.notBefore(last.at) : clock;
}
