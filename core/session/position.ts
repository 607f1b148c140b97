import type { CueId } from '../ids.ts';
import { type Cue, pourOf } from '../running-order/cue.ts';
import type { UnderWay } from './state.ts';

type Dropping = Pick<UnderWay, 'dropped' | 'closingDropped'>;

/** Whether everything this cue is about has been dropped, or the cue itself with the closing passes [P14]. */
function dropped(cue: Cue, { dropped: gone, closingDropped }: Dropping): boolean {
  switch (cue.kind) {
    case 'step':
    case 'water': {
      if (closingDropped && cue.kind === 'step' && cue.pass === 'closing') return true;
      const pour = pourOf(cue);
      return pour !== undefined && gone.includes(pour);
    }
    case 'ranking':
      // One pour cannot be ranked.
      return cue.pours.filter((pour) => !gone.includes(pour)).length < 2;
    case 'odd-one-out':
      return gone.includes(cue.a) || gone.includes(cue.b);
    case 'discussion':
    case 'reveal':
      return cue.pours.every((pour) => gone.includes(pour));
    case 'gathering':
    case 'welcome':
    case 'ground-rules':
    case 'practice':
    case 'break':
    case 'farewell':
      return false;
    default:
      return cue satisfies never;
  }
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

export const cueBefore = (session: UnderWay): Cue | undefined =>
  session.cues[playable(session).findLast((index) => index < session.at) ?? -1];

export const indexOfCue = (cues: readonly Cue[], id: CueId): number => cues.findIndex((cue) => cue.id === id);
