import type { GuestWords } from '../../shared/language/en/guest.ts';
import { type CueTime, type crossedMark, timeLeft } from '../../shared/ui/time-left.ts';
import type { StageUnderWay } from '../../shared/wire/views.ts';

export function timeOf({ clock }: StageUnderWay): CueTime {
  return clock.kind === 'running'
    ? { ...clock, status: 'running' }
    : { status: 'held', remaining: clock.remaining, total: Math.max(clock.remaining, 1) };
}

export const secondsLeft = (stage: StageUnderWay, now: number): number =>
  Math.max(0, Math.round(timeLeft(timeOf(stage), now).remaining / 1000));

/** What is said at a mark; who smells or sips has nothing to finish writing. */
export const saidAt = (
  { marks, writeOn }: Pick<GuestWords['spoken'], 'marks' | 'writeOn'>,
  mark: NonNullable<ReturnType<typeof crossedMark>>,
  { sense }: Pick<StageUnderWay['cue'], 'sense'>,
): string => (mark === 0 && sense !== null ? `${marks[mark]} ${writeOn}` : marks[mark]);
