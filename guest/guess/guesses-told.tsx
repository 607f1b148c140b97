import { GuessSpread } from '../../shared/talk/guess-spread.tsx';
import type { PourId } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';
import { drinkOf, GuessFold } from './guess-fold.tsx';

/** Below a name: how near this guest was, and what the room guessed, which comes with the name and shows once the name does. */
export function GuessesTold({ pour }: { readonly pour: PourId }) {
  const { follower } = useRoom();
  const stage = follower.stage.value;
  const guesses = follower.guesses.value.get(pour);
  const told = stage?.truths?.some((each) => each.pour === pour) ?? false;
  return (
    <>
      <GuessFold pour={pour} toldOnly />
      {stage && told && guesses && <GuessSpread guesses={guesses} drink={drinkOf(stage, pour)} />}
    </>
  );
}
