import type { PourId } from '../../../core/ids.ts';
import type { ToldResult } from '../../../core/panel/round-result.ts';
import type { HostPour } from '../../../core/session/views/host.ts';
import { saidOf } from '../../../shared/talk/result-texts.ts';
import { RoomResult } from '../../../shared/talk/room-result.tsx';
import '../../../shared/talk/result.css';
import { placesOf } from '../../evening/cue-words.ts';
import { words } from '../../language.ts';

interface ToldNowProps {
  readonly told: ToldResult;
  readonly pours: readonly HostPour[];
  readonly blind: boolean;
  readonly ownOrders: boolean;
}

/** What the room was told: the sentences to say, and below them the picture that every screen shows. */
export function ToldNow({ told, ...names }: ToldNowProps) {
  const nameOf = (id: PourId): string => nameForAll(names, id);
  return (
    <>
      <p class="now-label">{words.room.say}</p>
      {told.parts.map((part) => (
        <div class="now-told" key={part.pours.map(({ pour }) => pour).join()}>
          <blockquote class="say">{saidOf(part, nameOf)}</blockquote>
          {part.outcome === 'told' && <RoomResult part={part} nameOf={nameOf} unsaid />}
        </div>
      ))}
    </>
  );
}

/** As every screen of the room calls this glass: what it is once that is told, before that its place, or its code. */
function nameForAll({ pours, blind, ownOrders }: Omit<ToldNowProps, 'told'>, id: PourId): string {
  const pour = pours.find((each) => each.id === id);
  if (pour === undefined) return '';
  if (!blind || pour.revealed) return pour.name;
  return ownOrders && pour.code !== null
    ? words.glasses.code(pour.code)
    : words.cue.glass(placesOf(pours).get(id) ?? pour.position);
}
