import type { PourId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';

/** Something that was tasted and whose talk nobody has opened. */
export interface UnopenedDiscussion {
  readonly id: PourId;
  /** The room has been at its discussion: it was probably talked about, and only the tap was forgotten. */
  readonly likelyTalked: boolean;
}

/**
 * What would stay out of the recap if the evening ended now, pours in the order of the plan, then odd-one-outs. Opening
 * it shows no more than guests have chosen to share or let count [Q1, Q2].
 */
export function unopenedDiscussions(
  { pours, trials, timeline }: Pick<HostUnderWay, 'pours' | 'trials' | 'timeline'>,
  order: readonly Cue[],
): UnopenedDiscussion[] {
  const visited = new Set(timeline.map(({ cue }) => cue));
  const talked = new Set(
    order.flatMap((cue) => (cue.kind === 'discussion' && visited.has(cue.id) ? cue.pours : [])),
  );
  return [...pours.filter(({ dropped }) => !dropped), ...trials]
    .filter(({ reached, discussion }) => reached && discussion === 'silent')
    .map(({ id }) => ({ id, likelyTalked: talked.has(id) }));
}
