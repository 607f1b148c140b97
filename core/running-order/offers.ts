import type { PourId } from '../ids.ts';
import { type Seconds, seconds } from '../units.ts';
import { type Cue, poursOf } from './cue.ts';
import type { Pace } from './repace.ts';

/** What a host may leave out when even the shortest evening is too long, each with the time it saves. */
export type Offer =
  | { readonly kind: 'drop-pour'; readonly pour: PourId; readonly saves: Seconds }
  | { readonly kind: 'drop-closing-pass'; readonly saves: Seconds }
  | { readonly kind: 'shorten-discussions'; readonly saves: Seconds };

/** A discussion of a minute still lets the room agree to go on talking afterwards (own estimate, no source). */
export const shortTalk = seconds(60);

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
  const ofPour = (pour: PourId) =>
    remaining.filter((cue) => (cue.kind === 'step' || cue.kind === 'water') && poursOf(cue).includes(pour));
  const closing = remaining.filter((cue) => cue.kind === 'step' && cue.pass === 'closing');
  const talks = remaining.filter((cue) => cue.kind === 'discussion');
  const offers: Offer[] = [
    ...(pours.length > 1 ? untouched : []).map(
      (pour): Offer => ({ kind: 'drop-pour', pour, saves: length(ofPour(pour)) }),
    ),
    { kind: 'drop-closing-pass', saves: length(closing) },
    {
      kind: 'shorten-discussions',
      saves: seconds(talks.reduce((sum, cue) => sum + Math.max(0, cue.floor - shortTalk) * pace(cue), 0)),
    },
  ];
  return offers.filter((offer) => offer.saves > 0).toSorted((a, b) => b.saves - a.saves);
}
