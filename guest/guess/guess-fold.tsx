import { guessLine } from '../../shared/guess/guess-texts.ts';
import { guessWords as words } from '../../shared/language/en/guess.ts';
import type { PourId } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';
import { GuessForm } from './guess-form.tsx';
import { GuessTold } from './guess-told.tsx';

interface GuessFoldProps {
  readonly pour: PourId;
  /** Only how near it was, where nothing is to be guessed any more. */
  readonly toldOnly?: boolean;
}

/**
 * The guess of one glass, folded away until somebody wants it; once the name is told, how near it was. Nothing where this
 * evening guesses nothing.
 */
export function GuessFold({ pour, toldOnly = false }: GuessFoldProps) {
  const { follower } = useRoom();
  const stage = follower.stage.value;
  const own = follower.seat.value;
  // A page that was kept on the phone may be older than guesses.
  if (stage === null || !own?.guess) return null;
  const { choices, currency } = own.guess;
  const truth = stage.truths?.find((each) => each.pour === pour)?.truth;
  const guess = follower.notebook.read(pour, 'guess');
  const drink = drinkOf(stage, pour);
  if (truth !== undefined) return <GuessTold {...{ pour, guess, truth, drink }} asked={own.guess} />;
  if (toldOnly || isNamed(stage, pour)) return null;
  return (
    <details class="folded guess-fold">
      <summary>
        {words.title}
        <span class="folded-said" dir="auto">
          {guessLine(guess, choices, currency)}
        </span>
      </summary>
      <GuessForm key={pour} pour={pour} drink={drink} asked={own.guess} />
    </details>
  );
}

type Stage = NonNullable<ReturnType<typeof useRoom>['follower']['stage']['value']>;
const cardOf = (stage: Stage, pour: PourId) =>
  stage.glasses.find((glass) => glass.pour?.id === pour)?.pour ?? stage.cards.find(({ id }) => id === pour);
const isNamed = (stage: Stage, pour: PourId): boolean => cardOf(stage, pour)?.kind === 'named';
export const drinkOf = (stage: Stage, pour: PourId) => cardOf(stage, pour)?.drink ?? stage.drink;
