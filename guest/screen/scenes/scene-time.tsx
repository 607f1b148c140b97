import { DrainingGlass } from '../../../shared/ui/draining-glass.tsx';
import { useTick } from '../../../shared/ui/use-tick.ts';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { timeOf } from '../../stage/cue-time.ts';
import { words } from '../language.ts';

export interface SceneTimeProps {
  readonly stage: StageUnderWay;
  readonly now: () => number;
}

/** The time of the cue as a glass that drains, with its figures. */
export function SceneTime({ stage, now: clock }: SceneTimeProps) {
  const time = timeOf(stage);
  const running = time.status === 'running';
  const { timed } = stage.cue;
  const now = useTick(clock, { running: timed && running, anchor: running ? time.endsAt : 0 });
  if (!timed) return null;
  return (
    <div class="scene-time">
      <DrainingGlass time={time} now={now} label={words.time.label} words={words.time.phases} />
    </div>
  );
}
