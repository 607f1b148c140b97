import type { CueId, PourId } from '../../../core/ids.ts';
import type { ToldResult } from '../../../core/panel/round-result.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import type { DiscussionState, HostUnderWay } from '../../../core/session/views/host.ts';

/** What the one big button does now. */
export type PrimaryAction =
  /** Opening comes before moving on: a room that talks over unopened notes has nothing to look at. */
  | { readonly does: 'open-discussion'; readonly pours: readonly PourId[] }
  | { readonly does: 'reveal'; readonly from: CueId; readonly pours: readonly PourId[] }
  | { readonly does: 'tell-result'; readonly cue: CueId }
  | { readonly does: 'advance'; readonly from: CueId; readonly to: CueId }
  | { readonly does: 'finish' };

/**
 * At a discussion it first opens the talk, at a result it first tells it [R1], at a reveal it first tells the names, one by one or together [P21], then it
 * moves on; at the end it offers to finish. A talk that the host has closed again is over, and is not opened a second time by a thumb.
 */
export function primaryAction(
  view: Pick<HostUnderWay, 'cue' | 'next' | 'pours' | 'trials' | 'toTell' | 'naming' | 'results'>,
  cue: Cue | undefined,
): PrimaryAction {
  if (cue?.kind === 'discussion') {
    const silent = talkedAbout(view, cue.pours).filter((each) => each.discussion === 'silent');
    if (silent.length > 0) return { does: 'open-discussion', pours: silent.map(({ id }) => id) };
  }
  const [first] = view.toTell;
  if (first !== undefined) {
    const pours = view.naming === 'one-by-one' ? [first] : view.toTell;
    return { does: 'reveal', from: view.cue, pours };
  }
  if (cue?.kind === 'result' && resultAt(view, cue) === undefined)
    return { does: 'tell-result', cue: cue.id };
  return view.next === null ? { does: 'finish' } : { does: 'advance', from: view.cue, to: view.next };
}

/** What was told at this cue; nothing is told twice [R1]. */
export const resultAt = ({ results }: Pick<HostUnderWay, 'results'>, { id }: Cue): ToldResult | undefined =>
  results.find(({ cue }) => cue === id);

interface TalkedAbout {
  readonly id: PourId;
  readonly discussion: DiscussionState;
}

/** Those of the cue that have been in front of the room, odd-one-outs too; the others cannot be talked about yet. */
const talkedAbout = (
  { pours, trials }: Pick<HostUnderWay, 'pours' | 'trials'>,
  ids: readonly PourId[],
): TalkedAbout[] => [
  ...pours.filter(({ id, reached, dropped }) => ids.includes(id) && reached && !dropped),
  ...trials.filter(({ id, reached }) => ids.includes(id) && reached),
];
