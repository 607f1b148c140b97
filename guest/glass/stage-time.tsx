import { useEffect, useRef } from 'preact/hooks';
import { DrainingGlass } from '../../shared/ui/draining-glass.tsx';
import { crossedMark, timeLeft } from '../../shared/ui/time-left.ts';
import { useTick } from '../../shared/ui/use-tick.ts';
import type { StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { saidAt, timeOf } from '../stage/cue-time.ts';

/** The time of the cue; said aloud at 60, 20 and 0 s only [4.1.3 of WCAG]. */
export function StageTime({ stage }: { readonly stage: StageUnderWay }) {
  const { follower, status } = useRoom();
  const time = timeOf(stage);
  const running = time.status === 'running';
  const { timed } = stage.cue;
  const now = useTick(follower.clock.now, {
    running: timed && running,
    anchor: running ? time.endsAt : 0,
  });
  const { remaining } = timeLeft(time, now);
  const before = useRef(remaining);
  useEffect(() => {
    const mark = timed ? crossedMark(before.current, remaining) : undefined;
    before.current = remaining;
    if (mark !== undefined) status.say(saidAt(words.spoken, mark, stage.cue), { unseen: true });
  }, [remaining, timed, status]);
  if (!timed) return null;
  return <DrainingGlass time={time} now={now} label={words.glass.timeLabel} words={words.glass.time} />;
}
