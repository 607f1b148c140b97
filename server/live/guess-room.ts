import type { PourId, TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import type { RoomGuesses } from '../../shared/wire/guesses.ts';
import type { Store } from '../store/store.ts';
import { roomGuessesOf } from './guess-telling.ts';
import { followersOf, hostsOf, type LiveServer, type LiveSocket } from './rooms.ts';

interface GuessRoomParts {
  readonly io: LiveServer;
  readonly tasting: TastingId;
  readonly store: Pick<Store, 'notebooks'>;
}

/**
 * Tells what the room guessed of each pour, with its name and no earlier. The counts are those of the session and stay; only
 * who may be named is read from the notebooks, for that can be taken back at any time [Q12].
 */
export class GuessRoom {
  readonly #parts: GuessRoomParts;
  readonly #session: () => Session;
  #seen: Session;
  #told: ReadonlyMap<PourId, RoomGuesses>;

  constructor(parts: GuessRoomParts, session: () => Session) {
    this.#parts = parts;
    this.#session = session;
    this.#seen = session();
    this.#told = this.#made();
  }

  /** After a change of the session: new names come with their guesses, and a pour that is taken off the table takes its own. */
  follow(): void {
    const [before, session] = [this.#seen, this.#session()];
    this.#seen = session;
    if (!sameGuesses(before, session)) this.#tell();
  }

  /** Somebody has taken back that they may be named, or all of their notes. */
  withdrawn(): void {
    if (this.#told.size > 0) this.#tell();
  }

  welcome(sockets: readonly LiveSocket[]): void {
    const pours = [...this.#told.values()];
    if (pours.length > 0) for (const socket of sockets) socket.emit('guesses', { anew: true, pours });
  }

  /** What would say the same again is not sent: that something was swapped or taken back is nobody's business. */
  #tell(): void {
    const before = this.#told;
    this.#told = this.#made();
    const anew = [...before.keys()].some((pour) => !this.#told.has(pour));
    const changed = [...this.#told.values()].filter(
      (each) => JSON.stringify(each) !== JSON.stringify(before.get(each.pour)),
    );
    if (!anew && changed.length === 0) return;
    const { io, tasting } = this.#parts;
    io.to([followersOf(tasting), hostsOf(tasting)]).emit('guesses', {
      anew,
      pours: anew ? [...this.#told.values()] : changed,
    });
  }

  #made(): Map<PourId, RoomGuesses> {
    return new Map(roomGuessesOf(this.#parts, this.#session()).map((each) => [each.pour, each]));
  }
}

/** Whether nothing has happened of which guesses are made. */
const sameGuesses = (before: Session, after: Session): boolean =>
  before.status === after.status &&
  (before.status === 'unopened' ||
    after.status === 'unopened' ||
    (before.guessesTold === after.guessesTold &&
      before.revealed === after.revealed &&
      before.dropped === after.dropped &&
      before.plan === after.plan));
