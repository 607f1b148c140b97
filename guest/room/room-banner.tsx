import { useEffect } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import type { StageView } from '../../shared/wire/views.ts';
import { sheet, words } from '../language.ts';
import { cueWordsFor, drinkOf } from '../stage/cue-words.ts';
import { ownStage } from '../stage/own-stage.ts';
import { glassInHand, lastGlass } from '../stage/reached-glasses.ts';
import { useRoom } from './room.ts';

/** Where the room is, for somebody who still writes [F5]. The screen goes there when they tap it. */
export function RoomBanner() {
  const { follower, lock, status } = useRoom();
  const room = lock.ahead.value;
  const ahead = room === null ? null : ownStage(room, follower.seat.value);
  const where = ahead === null ? null : placeName(ahead);
  useEffect(() => {
    if (where !== null) status.say(words.banner.roomAt(where), { unseen: true });
  }, [where, status]);
  if (where === null) return null;
  return (
    <aside class="banner">
      <p>
        <strong>{words.banner.roomAt(where)}</strong> <span class="small">{words.banner.keepWriting}</span>
      </p>
      <Button kind="primary" onPress={lock.goOn}>
        {words.banner.go}
      </Button>
    </aside>
  );
}

function placeName(stage: StageView): string {
  if (stage.status === 'finished') return words.keepsake.title;
  const { verb } = cueWordsFor(sheet, stage.cue, drinkOf(stage));
  const hand = glassInHand(stage);
  return [
    verb,
    ...(stage.cue.sense === null ? [] : [words.fields[stage.cue.sense]]),
    ...(hand === null ? [] : [words.glass.of(hand.position, lastGlass(stage))]),
  ].join(', ');
}
