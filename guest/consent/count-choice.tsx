import { consentWords as words } from '../../shared/language/en/consents.ts';
import { type CountedAnswer, countings } from '../../shared/wire/sharing.ts';
import type { PourId } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';

interface CountChoiceProps {
  readonly about: CountedAnswer;
  /** Those that the answer is about: all of a ranking's. */
  readonly pours: readonly PourId[];
}

/** One row under what a guest has answered: whether it counts, without a name. Nothing is chosen before they tap [Q10]. */
export function CountChoice({ about, pours }: CountChoiceProps) {
  const { follower, consent } = useRoom();
  const given = pours.map((pour) => follower.consents.value.get(pour)?.[about]);
  const chosen = given.every((each) => each === given[0]) ? given[0] : undefined;
  return (
    <fieldset class="count-choice">
      <legend class="soft small">{words.counting.question[about]}</legend>
      {countings.map((value) => (
        <button
          type="button"
          key={value}
          class="chip"
          aria-pressed={value === chosen}
          onClick={() => void consent(pours, { [about]: value })}
        >
          {words.counting.choices[value]}
        </button>
      ))}
    </fieldset>
  );
}
