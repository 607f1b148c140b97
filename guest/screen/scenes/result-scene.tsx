import { RoomResult } from '../../../shared/talk/room-result.tsx';
import type { StageUnderWay, ToldResult } from '../../../shared/wire/views.ts';
import { cueWordsFor, drinkOf } from '../../stage/cue-words.ts';
import { nameForAll } from '../../stage/name-for-all.ts';
import { guestWords, sheet } from '../language.ts';

interface ResultSceneProps {
  readonly stage: StageUnderWay;
  readonly told: ToldResult;
}

/** What the room made of its glasses, as every phone shows it, side by side where there is more than one result. */
export function ResultScene({ stage, told }: ResultSceneProps) {
  return (
    <div class="scene scene-result">
      <h1 class="visually-hidden">{cueWordsFor(sheet, stage.cue, drinkOf(stage)).verb}</h1>
      {told.parts.map((part) => (
        <RoomResult
          key={part.pours.map(({ pour }) => pour).join()}
          part={part}
          nameOf={(pour) => nameForAll(guestWords, stage, pour)}
        />
      ))}
    </div>
  );
}
