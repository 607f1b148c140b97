import { allergenWords as said } from '../../../shared/language/en/allergens.ts';
import { AllergenPick } from '../../../shared/ui/allergen-pick.tsx';
import { Fold } from '../fields/fold.tsx';
import type { PourFields } from './drink-facts.tsx';

/** [C6] What the host has found out of what is in a pour, for whom it would harm. */
export function AllergensFold({ pour, set }: PourFields) {
  const picked = pour.allergens ?? [];
  const summary = picked.length === 0 ? said.noneNoted : picked.map((each) => said.names[each]).join(', ');
  return (
    <Fold title={said.title} summary={summary}>
      <AllergenPick
        legend={said.title}
        hint={`${said.hint} ${said.usual[pour.drink]}`}
        picked={picked}
        onPick={(now) => set('allergens', now.length === 0 ? undefined : [...now])}
      />
      <p class="small soft">{said.source}</p>
    </Fold>
  );
}
