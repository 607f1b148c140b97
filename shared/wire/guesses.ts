import type { PourId } from '../../core/ids.ts';
import type { RoomGuess } from '../../core/panel/guess/room.ts';

/** What the room guessed of a pour whose name is told, of those who let it count [Q12]. */
export interface RoomGuesses {
  readonly pour: PourId;
  /** How many guessed and how many of them count; null of fewer than three, of whom nothing is told. */
  readonly counts: { readonly counted: number; readonly of: number } | null;
  readonly currency: string;
  /** Only facts that three or more guessed. */
  readonly facts: readonly RoomGuess[];
}

/** To all that follow the room: with the name of a pour what was guessed of it, and once all of it to who comes. */
export interface GuessesTold {
  /** Whatever was told before is gone. */
  readonly anew: boolean;
  readonly pours: readonly RoomGuesses[];
}
