import type { PourId, SeatId, TastingId } from '../../core/ids.ts';
import type { Guess } from '../../core/panel/guess/guess.ts';
import { roomGuesses, toldGuesses } from '../../core/panel/guess/room.ts';
import { guestsOf } from '../../core/recap/table-of-pages.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import { evolveAll } from '../../core/session/evolve.ts';
import { guessesTold, guessesToTell, truthOfPour } from '../../core/session/guesses.ts';
import type { Evening, Session } from '../../core/session/state.ts';
import { isBlank } from '../../shared/notes/value.ts';
import type { RoomGuesses } from '../../shared/wire/guesses.ts';
import type { Consents } from '../../shared/wire/sharing.ts';
import type { Store } from '../store/store.ts';

interface GuessNotes {
  readonly store: Pick<Store, 'notebooks'>;
  readonly tasting: TastingId;
}

/**
 * What happens, and before it what the room guessed of the pours that it names: reckoned then and at no other time, and on
 * disk with the names [Q12]. It stands before them, for the last of them may end the evening.
 */
export function withGuessesTold(
  notes: GuessNotes,
  session: Session,
  events: readonly SessionEvent[],
): readonly SessionEvent[] {
  if (!events.some(({ type }) => naming.has(type))) return events;
  const after = evolveAll(session, events);
  const pours = after.status === 'unopened' ? [] : guessesToTell(after);
  if (after.status === 'unopened' || pours.length === 0) return events;
  const told = pours.map((pour) => {
    const all = guessesOf(notes, after, pour);
    const counted = all.filter(({ consents }) => consents.guess === 'counts');
    return toldGuesses(
      pour,
      counted.map(({ guess }) => guess),
      all.length,
    );
  });
  return [{ type: 'GuessesTold', told }, ...events];
}

/** What can bring the name of a pour in front of everybody. */
const naming: ReadonlySet<SessionEvent['type']> = new Set([
  'PoursRevealed',
  'PourRestored',
  'TastingFinished',
]);

interface SeatGuess {
  readonly seat: SeatId;
  readonly name: string;
  readonly guess: Guess;
  readonly consents: Consents;
}

/** What was told of all pours, beside what they are; names only of those who may still be named [Q12]. */
export function roomGuessesOf(notes: GuessNotes, session: Session): RoomGuesses[] {
  if (session.status === 'unopened') return [];
  return guessesTold(session).map((told) => {
    const { pour, counts } = told;
    const named = guessesOf(notes, session, pour).filter(
      ({ consents }) => consents.guess === 'counts' && consents.nearest === 'may-be-named',
    );
    const facts = roomGuesses(told, truthOfPour(session, pour) ?? {}, session.guess ?? {}, named);
    return { pour, counts, currency: session.plan.currency, facts };
  });
}

/** Of everybody at the table who guessed this pour, with what they permit now. */
const guessesOf = (
  { store: { notebooks }, tasting }: GuessNotes,
  evening: Evening,
  pour: PourId,
): SeatGuess[] =>
  guestsOf(evening).flatMap(({ id, name }) => {
    const value = notebooks.find(tasting, id, pour, 'guess')?.value;
    if (value === undefined || isBlank(value)) return [];
    const given = notebooks.consents(tasting, id).find((each) => each.pour === pour)?.consents;
    // That a field and its value belong together was checked where the value came in.
    return [{ seat: id, name, guess: value as Guess, consents: given ?? {} }];
  });
