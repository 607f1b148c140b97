import type { PourId } from '../../core/ids.ts';
import { toldAllergens } from '../../core/running-order/told-allergens.ts';
import type { Plan } from '../../core/tasting.ts';
import { allergenWords as said } from '../../shared/language/en/allergens.ts';

/** [C6] A line for a glass on paper; empty where nothing is noted. `named`: the paper names the pour as well. */
export const allergensOnPaper = (plan: Plan, id: PourId, named: boolean): string =>
  lineOf(said.told, plan, id, named);

/** The same for the little room of a vial. */
export const allergensOnVial = (plan: Plan, id: PourId, named: boolean): string =>
  lineOf(said.vial, plan, id, named);

function lineOf(words: typeof said.told, plan: Plan, id: PourId, named: boolean): string {
  const told = toldAllergens(plan, id, named);
  if (told === null) return '';
  // What stands in brackets explains the name to whoever chooses it.
  return words[told.of](told.noted.map((allergen) => said.names[allergen].replace(/ \(.*\)/, '')));
}
