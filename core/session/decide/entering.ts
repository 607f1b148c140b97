import type { Cue } from '../../running-order/cue.ts';
import { traitsOf } from '../../running-order/cue-traits.ts';
import { later } from '../../units.ts';
import type { Moment } from '../command.ts';
import type { SessionEvent } from '../event.ts';
import type { UnderWay } from '../state.ts';

/**
 * What happens when the room moves to `cue`. A glass in front of everybody ends the talk: an open discussion is
 * closed, for nobody should read of one glass while nosing another.
 */
export function entering(
  session: UnderWay,
  cue: Cue,
  by: 'host' | 'clock' | 'room',
  { now, lead }: Moment,
  takesBack = false,
): SessionEvent[] {
  const entered: SessionEvent = {
    type: 'CueEntered',
    cue: cue.id,
    at: later(now, lead),
    by,
    ...(takesBack && { takesBack }),
  };
  const { pours, trials } = session.plan;
  const open = [...pours, ...trials].map(({ id }) => id).filter((id) => session.discussions[id]?.open);
  return traitsOf(cue).closesTalk && open.length > 0
    ? [{ type: 'DiscussionClosed', pours: open }, entered]
    : [entered];
}
