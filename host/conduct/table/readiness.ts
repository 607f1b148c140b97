import type { HostUnderWay } from '../../../core/session/views/host.ts';
import type { EpochMs } from '../../../core/units.ts';
import type { Table } from '../../evening/table.ts';

/**
 * Whether the room waits for its last ones: half of those here are ready or the time is over, and somebody is not
 * ready who has not asked for more time. Who asks for time is not to be hurried.
 */
export function waitsForLastOnes(
  { asksReady, clock, reminder }: Pick<HostUnderWay, 'asksReady' | 'clock' | 'reminder'>,
  { here, ready, moreTime }: Pick<Table['counts'], 'here' | 'ready' | 'moreTime'>,
  now: EpochMs,
): boolean {
  if (!asksReady || reminder?.kind === 'nudge' || ready + moreTime >= here) return false;
  const over = clock.kind === 'running' ? clock.endsAt <= now : clock.remaining <= 0;
  return over || (ready > 0 && 2 * ready >= here);
}
