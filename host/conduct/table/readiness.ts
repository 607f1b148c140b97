import type { Cue } from '../../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import type { EpochMs } from '../../../core/units.ts';
import type { Table } from '../../evening/table.ts';

/** Cues in which guests are asked whether they are ready. */
export function asksForReadiness(cue: Cue): boolean {
  switch (cue.kind) {
    case 'step':
    case 'practice':
    case 'ranking':
    case 'odd-one-out':
      return true;
    case 'gathering':
    case 'welcome':
    case 'ground-rules':
    case 'water':
    case 'break':
    case 'discussion':
    case 'reveal':
    case 'farewell':
      return false;
    default:
      return cue satisfies never;
  }
}

/**
 * Whether the room waits for its last ones: half of those here are ready or the time is over, and somebody is not
 * ready who has not asked for more time. Who asks for time is not to be hurried.
 */
export function waitsForLastOnes(
  { clock, reminder }: Pick<HostUnderWay, 'clock' | 'reminder'>,
  cue: Cue,
  { here, ready, moreTime }: Pick<Table['counts'], 'here' | 'ready' | 'moreTime'>,
  now: EpochMs,
): boolean {
  if (!asksForReadiness(cue) || reminder?.kind === 'nudge' || ready + moreTime >= here) return false;
  const over = clock.kind === 'running' ? clock.endsAt <= now : clock.remaining <= 0;
  return over || (ready > 0 && 2 * ready >= here);
}
