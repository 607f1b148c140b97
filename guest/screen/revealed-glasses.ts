import type { PourCard, PourId, StageUnderWay } from '../../shared/wire/views.ts';
import { cardName, glassOf, reachedGlasses } from '../stage/reached-glasses.ts';
import { guestWords, words } from './language.ts';

type Stage = Pick<StageUnderWay, 'cue' | 'glasses' | 'cards' | 'ownOrders'>;

/** What the whole room is told of a glass. With own orders no place is everybody's: a pour goes by its code alone. */
export interface RevealedGlass {
  readonly position: number | null;
  readonly card: PourCard;
}

/** The glasses of a reveal, in the order of the arc. */
export function revealedGlasses({ cue, glasses, cards, ownOrders }: Stage): RevealedGlass[] {
  const asked = (id: PourId): boolean => cue.pours.includes(id);
  if (ownOrders) return cards.filter(({ id }) => asked(id)).map((card) => ({ position: null, card }));
  return reachedGlasses({ glasses }).filter(({ card }) => asked(card.id));
}

/** A glass by its pour, in whatever cue. */
export const toldGlass = (stage: Stage, pour: PourId): RevealedGlass | undefined =>
  revealedGlasses({ ...stage, cue: { ...stage.cue, pours: [pour] } })[0];

/** Those that everybody knows by name, in the order of the arc, or by their codes. */
export const namedPours = ({ glasses, cards, ownOrders }: Omit<Stage, 'cue'>): PourId[] =>
  (ownOrders ? cards : reachedGlasses({ glasses }).map(({ card }) => card))
    .filter(({ kind }) => kind === 'named')
    .map(({ id }) => id);

/** By its place, and its code or name. */
export function glassName(stage: Stage, pour: PourId): string {
  const glass = glassOf(stage, pour);
  const card = glass?.card ?? stage.cards.find(({ id }) => id === pour);
  if (card === undefined) return words.place.aGlass;
  const names = [
    ...(glass === undefined ? [] : [words.place.glass(glass.position)]),
    ...[cardName(guestWords, card) ?? []].flat(),
  ];
  return names.length === 0 ? words.place.aGlass : names.join(' · ');
}
