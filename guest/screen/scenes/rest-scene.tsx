import { timeOfDay, words } from '../language.ts';
import { CueHint, CueVerb } from './cue-line.tsx';
import { SceneTime, type SceneTimeProps } from './scene-time.tsx';

/** Water or a break: the countdown is what people look up for. */
export function RestScene({ stage, now }: SceneTimeProps) {
  const { clock, cue } = stage;
  return (
    <div class="scene scene-rest">
      <div class="scene-main">
        <CueVerb stage={stage} />
        <CueHint stage={stage} />
        {cue.kind === 'break' && clock.kind === 'running' && (
          <p class="scene-water">{words.goOnAt(timeOfDay(clock.endsAt))}</p>
        )}
      </div>
      <SceneTime stage={stage} now={now} />
    </div>
  );
}
