import { type CueTime, timeLeft } from '../../shared/ui/time-left.ts';
import type { StageUnderWay } from '../../shared/wire/views.ts';

export function timeOf({ clock }: StageUnderWay): CueTime {
  return clock.kind === 'running'
    ? { ...clock, status: 'running' }
    : { status: 'held', remaining: clock.remaining, total: Math.max(clock.remaining, 1) };
}

export const secondsLeft = (stage: StageUnderWay, now: number): number =>
  Math.max(0, Math.round(timeLeft(timeOf(stage), now).remaining / 1000));
