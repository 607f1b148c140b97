import { useEffect } from 'preact/hooks';
import type { CueWords } from '../../shared/language/en/cues.ts';
import type { StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { speakPrompt } from '../sound/spoken-prompt.ts';
import { secondsLeft } from '../stage/cue-time.ts';
import { glassInHand, lastGlass } from '../stage/reached-glasses.ts';

/** The polite region says each new cue once: where, what, and how long. */
export function useAnnouncedCue(stage: StageUnderWay, said: CueWords): void {
  const { follower, status } = useRoom();
  useEffect(() => {
    const hand = glassInHand(stage);
    const place = hand === null ? [] : [words.glass.of(hand.position, lastGlass(stage))];
    const time = stage.cue.timed ? [words.spoken.start(secondsLeft(stage, follower.clock.now()))] : [];
    status.say(words.spoken.cue([...place, said.verb, said.hint, ...time]), { unseen: true });
    speakPrompt(words.spoken.cue([...place, said.verb, said.hint]));
  }, [stage.cue.id]);
}
