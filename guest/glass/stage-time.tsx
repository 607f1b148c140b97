import { useEffect, useRef } from 'preact/hooks';
import { DrainingGlass } from '../../shared/ui/draining-glass.tsx';
import { type CueTime, crossedMark, timeLeft } from '../../shared/ui/time-left.ts';
import { useTick } from '../../shared/ui/use-tick.ts';
import type { StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { useRoom } from '../seat/room.ts';

/** Time is shown where it asks something of the guest; the host's own moments have none. */
export function isTimed({ cue }: StageUnderWay): boolean {
  switch (cue.kind) {
    case 'step':
    case 'practice':
    case 'water':
    case 'break':
    case 'ranking':
    case 'odd-one-out':
    case 'discussion':
      return true;
    case 'gathering':
    case 'welcome':
    case 'ground-rules':
    case 'reveal':
    case 'farewell':
      return false;
    default:
      return cue.kind satisfies never;
  }
}

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

/** The time of the cue; said aloud at 60, 20 and 0 s only [4.1.3 of WCAG]. */
export function StageTime({ stage }: { readonly stage: StageUnderWay }) {
  const { follower, status } = useRoom();
  const time = timeOf(stage);
  const running = time.status === 'running';
  const timed = isTimed(stage);
  const now = useTick(follower.clock.now, {
    running: timed && running,
    anchor: running ? time.endsAt : 0,
  });
  const { remaining } = timeLeft(time, now);
  const before = useRef(remaining);
  useEffect(() => {
    const mark = timed ? crossedMark(before.current, remaining) : undefined;
    before.current = remaining;
    if (mark !== undefined) status.say(words.spoken.marks[mark], { unseen: true });
  }, [remaining, timed, status]);
  if (!timed) return null;
  return <DrainingGlass time={time} now={now} label={words.glass.timeLabel} words={words.glass.time} />;
}
