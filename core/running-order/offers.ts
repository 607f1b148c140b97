import type { PourId } from '../ids.ts';
import { type Seconds, seconds } from '../units.ts';
import { type Cue, isClosing, pourOf, poursOf } from './cue.ts';
import { traitsOf } from './cue-traits.ts';
import type { Pace } from './repace.ts';

/** What a host may leave out when even the shortest evening is too long, each with the time it saves. */
export type Offer =
  | { readonly kind: 'drop-pour'; readonly pour: PourId; readonly saves: Seconds }
  | { readonly kind: 'drop-closing-pass'; readonly saves: Seconds }
  | { readonly kind: 'shorten-discussions'; readonly saves: Seconds };

/**
 * Most saved first. A pour is offered only while none of its cues has begun, and never the last one; the later pour
 * first where two save the same. Seconds are at the floors, where an evening that is too long already stands.
 * @param remaining the cues still to come, without the current one
 */
export function offersFor(remaining: readonly Cue[], pace: Pace = () => 1): Offer[] {
  const length = (cues: readonly Cue[]) => seconds(cues.reduce((sum, cue) => sum + cue.floor * pace(cue), 0));
  const begun = (pour: PourId) =>
    !remaining.some(
      (cue) => cue.kind === 'step' && cue.pour === pour && cue.pass === 'first' && cue.step === 'swirl',
    );
  const pours = [...new Set(remaining.flatMap((cue) => (cue.kind === 'step' ? poursOf(cue) : [])))];
  const untouched = pours.filter((pour) => !begun(pour)).toReversed();
  const ofPour = (pour: PourId) => remaining.filter((cue) => pourOf(cue) === pour);
  const offers: Offer[] = [
    ...(pours.length > 1 ? untouched : []).map(
      (pour): Offer => ({ kind: 'drop-pour', pour, saves: length(ofPour(pour)) }),
    ),
    { kind: 'drop-closing-pass', saves: length(remaining.filter(isClosing)) },
    {
      kind: 'shorten-discussions',
      saves: seconds(remaining.reduce((sum, cue) => sum + spareTalk(cue) * pace(cue), 0)),
    },
  ];
  return offers.filter((offer) => offer.saves > 0).toSorted((a, b) => b.saves - a.saves);
}

/** Seconds by which a cue may go below its floor when talks are cut to the least [P15]. */
export function spareTalk(cue: Cue): number {
  const { shortensTo } = traitsOf(cue);
  return shortensTo === null ? 0 : Math.max(0, cue.floor - shortensTo);
}
