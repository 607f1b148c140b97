import { GuessSpread } from '../../../shared/talk/guess-spread.tsx';
import type { RoomGuesses } from '../../../shared/wire/guesses.ts';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { drinkOf } from '../../stage/cue-words.ts';
import { glassName, toldGlass } from '../revealed-glasses.ts';

interface GuessesOnScreenProps {
  readonly stage: StageUnderWay;
  readonly guesses: RoomGuesses;
}

/** What the room guessed of one glass, fact beside fact, by its name. */
export function GuessesOnScreen({ stage, guesses }: GuessesOnScreenProps) {
  const { pour, facts } = guesses;
  return (
    <div class="scene scene-guesses" style={{ '--facts': facts.length }}>
      <h1 dir="auto">{glassName(stage, pour)}</h1>
      <GuessSpread
        guesses={guesses}
        drink={toldGlass(stage, pour)?.card.drink ?? drinkOf(stage)}
        level={2}
        rows={4}
      />
    </div>
  );
}
