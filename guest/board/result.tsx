import { resultWords } from '../../shared/language/en/result.ts';
import { RoomResult } from '../../shared/talk/room-result.tsx';
import type { StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { nameForAll } from '../stage/name-for-all.ts';

/** What the room made of these glasses, once the host has told it. */
export function Result({ stage }: { readonly stage: StageUnderWay }) {
  const told = stage.results.find(({ cue }) => cue === stage.cue.id);
  if (told === undefined) return <p class="soft">{resultWords.soon}</p>;
  return (
    <div class="stack">
      {told.parts.map((part) => (
        <RoomResult
          key={part.pours.map(({ pour }) => pour).join()}
          part={part}
          nameOf={(pour) => nameForAll(words, stage, pour)}
        />
      ))}
    </div>
  );
}
