import type { Drink, PourId, StageView } from '../../shared/wire/views.ts';
import { words as pageWords } from '../language.ts';
import { cardName, reachedGlasses } from '../stage/reached-glasses.ts';
import { words } from './language.ts';

/** Something that has a page of its own: a pour, or an odd-one-out. */
export interface BoardItem {
  readonly id: PourId;
  readonly title: string;
  readonly name: string | null;
  /** Null for an odd-one-out. */
  readonly drink: Drink | null;
}

/** The pages that a guest may have put something on, in the order of the arc, odd-one-outs last. */
export function boardItems(stage: StageView, trials: readonly { readonly id: PourId }[]): BoardItem[] {
  const pours = reachedGlasses(stage).map(({ position, card }) => ({
    id: card.id,
    title: pageWords.glass.nth(position),
    name: cardName(pageWords, card),
    drink: card.drink,
  }));
  const odd = trials.map(({ id }, index) => ({
    id,
    title: trials.length > 1 ? `${words.trial} ${index + 1}` : words.trial,
    name: null,
    drink: null,
  }));
  return [...pours, ...odd];
}
