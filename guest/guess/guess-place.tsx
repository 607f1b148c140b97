import { lazyComponent, lazyPart } from '../../shared/page/lazy-part.ts';
import type { PourId } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';

/** What is fetched for an evening with guesses, and for no other. */
export const guessPart = lazyPart(() => import('./guess-part.ts'));

const Fold = lazyComponent(guessPart, ({ guessPages }) => guessPages.GuessFold);
const Told = lazyComponent(guessPart, ({ guessPages }) => guessPages.GuessesTold);

interface OfPour {
  readonly pour: PourId;
}

/** Where the guess of a glass is given; nothing where this evening guesses nothing. */
export function GuessPlace({ pour }: OfPour) {
  return useGuessing() ? <Fold pour={pour} /> : null;
}

/** Where it is told, below the name. */
export function GuessesPlace({ pour }: OfPour) {
  return useGuessing() ? <Told pour={pour} /> : null;
}

/** A page that was kept on the phone may be older than guesses. */
export const useGuessing = (): boolean => Boolean(useRoom().follower.seat.value?.guess);
