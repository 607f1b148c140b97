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
      {children}
    </div>
  );
}

/** The rules, and the cautions for whoever has no phone to read them on. */
export function Rules() {
  return (
    <>
      <ul class="scene-rules" aria-label={guestWords.rules.title}>
        {guestWords.rules.list.map((rule) => (
          <li key={rule}>{rule}</li>
        ))}
      </ul>
      <p class="scene-aside">{words.rulesCare}</p>
    </>
  );
}
