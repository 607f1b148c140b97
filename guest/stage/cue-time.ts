import { type CueTime, timeLeft } from '../../shared/ui/time-left.ts';
import type { StageUnderWay } from '../../shared/wire/views.ts';

export function timeOf({ clock }: StageUnderWay): CueTime {
  switch (clock.kind) {
    case 'running':
      return { status: 'running', startsAt: clock.startsAt, endsAt: clock.endsAt };
    case 'held':
      return { status: 'held', remaining: clock.remaining, total: Math.max(clock.remaining, 1) };
    default:
      return clock satisfies never;
  }
}

export const secondsLeft = (stage: StageUnderWay, now: number): number =>
  Math.max(0, Math.round(timeLeft(timeOf(stage), now).remaining / 1000));
