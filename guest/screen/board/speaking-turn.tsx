import { speakersNow, talkNow, talkTime } from '../../../shared/talk/speaking-order.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import type { BoardView } from '../../../shared/wire/board.ts';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { words } from '../language.ts';

interface SpeakingTurnProps {
  readonly stage: StageUnderWay;
  readonly board: BoardView;
  readonly now: () => number;
}

/** Whose turn it is about now, as on everybody's phone; nothing rings, and nobody is cut off. */
export function SpeakingTurn({ stage, board, now }: SpeakingTurnProps) {
  const talk = stage.cue.kind === 'discussion' ? talkNow(board.pours) : null;
  const time = talk === null ? null : talkTime(talk, stage.clock);
  const moment = useTick(now, { running: time !== null, anchor: time?.until ?? 0, period: 5000 });
  if (talk === null || time === null) return null;
  const turn = speakersNow(board.table, talk, time, moment);
  return turn === null ? null : (
    <p class="board-speaker" dir="auto">
      {words.talk.turn(turn.speaking.name, turn.next.name)}
    </p>
  );
}
