import type { PourId, SeatId, TastingId } from '../../core/ids.ts';
import { type Guess, guessFacts } from '../../core/panel/guess/guess.ts';
import { type CountedGuess, roomGuess } from '../../core/panel/guess/room.ts';
import { guessedPours, truthOfPour } from '../../core/session/guesses.ts';
import { inTellingOrder } from '../../core/session/serving.ts';
import type { Evening, Session } from '../../core/session/state.ts';
import { isBlank } from '../../shared/notes/value.ts';
import type { RoomGuesses } from '../../shared/wire/guesses.ts';
import type { Store } from '../store/store.ts';
import { followersOf, hostsOf, type LiveServer, type LiveSocket } from './rooms.ts';

interface GuessRoomParts {
  readonly io: LiveServer;
  readonly tasting: TastingId;
  readonly store: Pick<Store, 'notebooks'>;
}

/**
 * Tells what the room guessed of each pour, with its name and no earlier [Q12]. It is made of what lies in the notebooks, in
 * which no guess changes after the name; so a server that fell in between tells the same.
 */
export class GuessRoom {
  readonly #parts: GuessRoomParts;
  readonly #session: () => Session;
  readonly #told = new Map<PourId, RoomGuesses>();

  constructor(parts: GuessRoomParts, session: () => Session) {
    this.#parts = parts;
    this.#session = session;
  }

  /** After a change of the session: new names come with their guesses, and a pour that is taken off the table takes its own. */
  follow(): void {
    const pours = this.#pours();
    const gone = [...this.#told.keys()].filter((pour) => !pours.includes(pour));
    const added = pours.filter((pour) => !this.#told.has(pour));
    for (const pour of gone) this.#told.delete(pour);
    if (added.length === 0 && gone.length === 0) return;
    const fresh = added.map((pour) => this.#of(pour));
    this.#emit(gone.length > 0, fresh);
  }

  /** Somebody has taken back that their guess counts, or that they may be named, or all of their notes. */
  withdrawn(): void {
    if (this.#told.size === 0) return;
    this.#told.clear();
    this.#emit(
      true,
      this.#pours().map((pour) => this.#of(pour)),
    );
  }

  welcome(sockets: readonly LiveSocket[]): void {
    const pours = this.#pours().map((pour) => this.#of(pour));
    if (pours.length > 0) for (const socket of sockets) socket.emit('guesses', { anew: true, pours });
  }

  #emit(anew: boolean, fresh: readonly RoomGuesses[]): void {
    const { io, tasting } = this.#parts;
    io.to([followersOf(tasting), hostsOf(tasting)]).emit('guesses', {
      anew,
      pours: anew ? [...this.#told.values()] : fresh,
    });
  }

  #pours(): PourId[] {
    const session = this.#session();
    if (session.status === 'unopened' || session.guess === null) return [];
    return inTellingOrder(session.plan, guessedPours(session));
  }

  #of(pour: PourId): RoomGuesses {
    const known = this.#told.get(pour);
    if (known !== undefined) return known;
    const session = this.#session();
    if (session.status === 'unopened') throw new Error('Nobody guesses before the doors are open.');
    const made = this.#made(session, pour);
    this.#told.set(pour, made);
    return made;
  }

  #made(session: Evening, pour: PourId): RoomGuesses {
    const { store, tasting } = this.#parts;
    const seats = Object.values(session.seats).filter(
      ({ presence }) => presence === 'seated' || presence === 'left',
    );
    const guessed = (seat: SeatId): Guess | undefined => {
      const value = store.notebooks.find(tasting, seat, pour, 'guess')?.value;
      // That a field and its value belong together was checked where the value came in.
      return value === undefined || isBlank(value) ? undefined : (value as Guess);
    };
    const all = seats.flatMap(({ id, name }) => {
      const guess = guessed(id);
      if (guess === undefined) return [];
      const consents = store.notebooks.consents(tasting, id).find((each) => each.pour === pour)?.consents;
      const counts = consents?.guess === 'counts';
      return [{ guess, counts, name: counts && consents.nearest === 'may-be-named' ? name : null }];
    });
    const counted = all.filter(({ counts }) => counts);
    const { currency } = session.plan;
    if (counted.length < 3) return { pour, counts: null, currency, facts: [] };
    const truth = truthOfPour(session, pour) ?? {};
    const facts = guessFacts.flatMap((fact) => {
      const known = truth[fact];
      const values = counted.flatMap(({ guess, name }): CountedGuess[] => {
        const value = guess[fact];
        return value === undefined ? [] : [{ value, name }];
      });
      if (known === undefined) return [];
      return roomGuess(fact, known, session.guess?.[fact] ?? [], values) ?? [];
    });
    return { pour, counts: { counted: counted.length, of: all.length }, currency, facts };
  }
}
