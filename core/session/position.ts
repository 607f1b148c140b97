import type { CueId } from '../ids.ts';
import { type Cue, isClosing, pouredFor } from '../running-order/cue.ts';
import { traitsOf } from '../running-order/cue-traits.ts';
import { type Ending, endingOf } from '../running-order/tempo.ts';
import { cueNow, type UnderWay } from './state.ts';

type Dropping = Pick<UnderWay, 'dropped' | 'closingDropped'>;

/** Whether too few of its pours are left for this cue, or it went with the closing passes [P10, P14]. */
function dropped(cue: Cue, { dropped: gone, closingDropped }: Dropping): boolean {
  if (closingDropped && isClosing(cue)) return true;
  return pouredFor(cue).filter((pour) => !gone.includes(pour)).length < traitsOf(cue).leastPours;
}

/**
 * Indices of the cues that are still to be played, in order: without dropped pours, and without a planned break
 * that would follow another break because everything between them was dropped.
 */
export function playable(session: Pick<UnderWay, 'cues'> & Dropping): number[] {
  const kept: number[] = [];
  session.cues.forEach((cue, index) => {
    if (dropped(cue, session)) return;
    const before = session.cues[kept.at(-1) ?? -1];
    const doubled = cue.kind === 'break' && !cue.called && before?.kind === 'break' && !before.called;
    if (!doubled) kept.push(index);
  });
  return kept;
}

export const cueAfter = (session: UnderWay): Cue | undefined =>
  session.cues[playable(session).find((index) => index > session.at) ?? -1];

/** [P2, P3, P18, P19] What ends the current cue. */
export const endingNow = (session: UnderWay): Ending =>
  endingOf(cueNow(session), cueAfter(session), session.pacing);

export const cueBefore = (session: UnderWay): Cue | undefined =>
  session.cues[playable(session).findLast((index) => index < session.at) ?? -1];

export const indexOfCue = (cues: readonly Cue[], id: CueId): number => cues.findIndex((cue) => cue.id === id);
