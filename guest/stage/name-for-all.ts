import type { GuestWords } from '../../shared/language/en/guest.ts';
import type { PourId, StageView } from '../../shared/wire/views.ts';
import { cardName, glassOf } from './reached-glasses.ts';

/**
 * The one name by which every screen of the room calls a glass: what it is once that is told; until then its place, or with
 * own orders, where a place is another glass in each hand, its code.
 */
export function nameForAll(
  words: GuestWords,
  { glasses, cards, ownOrders }: Pick<StageView, 'glasses' | 'cards' | 'ownOrders'>,
  pour: PourId,
): string {
  const glass = glassOf({ glasses }, pour);
  const card = cards.find(({ id }) => id === pour) ?? glass?.card;
  if (card?.kind === 'named') return card.name;
  if (glass !== undefined && !ownOrders) return words.glass.nth(glass.position);
  return card === undefined ? '' : (cardName(words, card) ?? '');
}
