import type { ComponentChildren } from 'preact';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { guestWords, words } from '../language.ts';
import { CueHint, CueVerb } from './cue-line.tsx';

interface TextSceneProps {
  readonly stage: StageUnderWay;
  readonly children?: ComponentChildren;
}

/** The host speaks: one word and one line. */
export function TextScene({ stage, children }: TextSceneProps) {
  return (
    <div class="scene scene-word">
      <CueVerb stage={stage} />
      {stage.cue.kind === 'discussion' ? (
        <p class="scene-hint">{words.talk.closed}</p>
      ) : (
        <CueHint stage={stage} />
      )}
      {/* The cautions, before the first glass, for whoever has no phone to read them on. */}
      {stage.cue.kind === 'welcome' && <p class="scene-aside">{words.welcomeCare}</p>}
      {children}
    </div>
  );
}

export function Rules() {
  return (
    <ul class="scene-rules" aria-label={guestWords.rules.title}>
      {guestWords.rules.list.map((rule) => (
        <li key={rule}>{rule}</li>
      ))}
    </ul>
  );
}
