import { GlassArc } from '../../../shared/ui/glass-arc.tsx';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { cardName, glassOf, lastGlass } from '../../stage/reached-glasses.ts';
import { guestWords, words } from '../language.ts';
import { CueHint, CueVerb } from './cue-line.tsx';
import { ReminderLine } from './reminder-line.tsx';
import { SceneTime, type SceneTimeProps } from './scene-time.tsx';

/** A step with a glass in hand: the arc with the glass raised, the verb, the time, and one line. */
export function StepScene({ stage, now }: SceneTimeProps) {
  const { kind, step } = stage.cue;
  const placed = kind === 'step' && stage.glasses.length > 0;
  return (
    <div class={placed ? 'scene scene-step' : 'scene scene-rest'}>
      <div class="scene-main">
        <CueVerb stage={stage} />
        <CueHint stage={stage} />
        {kind === 'practice' && <p class="scene-water">{words.practice}</p>}
        {step === 'sip' && <p class="scene-water">{words.spitToo}</p>}
      </div>
      <div class="scene-side">
        <SceneTime stage={stage} now={now} />
        <ReminderLine stage={stage} now={now} />
      </div>
      {placed && <Place stage={stage} />}
    </div>
  );
}

/** With own orders the place is everybody's and the pour is not; then only the place is shown. */
function Place({ stage }: { readonly stage: StageUnderWay }) {
  const total = lastGlass(stage);
  const { position } = stage.cue;
  const [pour] = stage.cue.pours;
  const card = pour === undefined ? undefined : glassOf(stage, pour)?.card;
  const name = card === undefined ? null : cardName(guestWords, card);
  return (
    <div class="scene-place">
      <GlassArc
        glasses={stage.glasses.map((glass) =>
          glass.position === position ? 'current' : glass.reached ? 'done' : 'waiting',
        )}
        label={words.place.arc(position, total)}
      />
      <p class="scene-glass">
        {position !== null && <span>{words.place.glassOf(position, total)}</span>}
        {name !== null && <span dir="auto">{name}</span>}
      </p>
    </div>
  );
}
