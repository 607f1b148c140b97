import type { PourId } from '../../core/ids.ts';
import { toldAllergens } from '../../core/running-order/told-allergens.ts';
import type { Plan } from '../../core/tasting.ts';
import { allergenWords as said } from '../../shared/language/en/allergens.ts';

/** [C6] A line for a glass on paper; empty where nothing is noted. `named`: the paper names the pour as well. */
export function allergensOnPaper(plan: Plan, id: PourId, named: boolean): string {
  const told = toldAllergens(plan, id, named);
  return told === null ? '' : said.told[told.of](told.noted.map((allergen) => said.names[allergen]));
}
