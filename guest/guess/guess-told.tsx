import { besideTruth, factName, judged, nearnessText } from '../../shared/guess/guess-texts.ts';
import { guessWords as words } from '../../shared/language/en/guess.ts';
import type { NoteValues } from '../../shared/notes/entry.ts';
import { Button } from '../../shared/ui/button.tsx';
import type { Drink, PourId, SeatView, StageView } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';

interface GuessToldProps {
  readonly pour: PourId;
  readonly guess: NoteValues['guess'];
  readonly truth: StageView['truths'][number]['truth'];
  readonly asked: NonNullable<SeatView['guess']>;
  readonly drink: Drink;
}

/** For this guest alone: what they said, what it is, and how near that was in a word. */
export function GuessTold({ pour, guess, truth, asked, drink }: GuessToldProps) {
  const { follower, consent } = useRoom();
  const mayBeNamed = follower.consents.value.get(pour)?.nearest === 'may-be-named';
  const near = judged(guess, truth, asked.choices);
  if (near.length === 0) return null;
  return (
    <section class="guess-told stack-tight">
      <h3>{words.told.title}</h3>
      <dl class="stack-tight">
        {near.map((each) => (
          <div key={each.fact}>
            <dt>{factName(each.fact, drink)}</dt>
            <dd dir="auto">
              <b>{nearnessText(each)}</b>
              <span class="soft"> {besideTruth(each, asked.currency)}</span>
            </dd>
          </div>
        ))}
      </dl>
      {mayBeNamed && (
        <Button kind="quiet" onPress={() => void consent([pour], { nearest: 'unnamed' })}>
          {words.counting.unname}
        </Button>
      )}
    </section>
  );
}
