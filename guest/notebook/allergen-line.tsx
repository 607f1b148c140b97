import { allergenWords as said } from '../../shared/language/en/allergens.ts';
import type { ToldAllergens } from '../../shared/wire/views.ts';

/** [C6] Before the sip, what the host noted for whom it harms. */
export function AllergenLine({ told: { of, noted } }: { readonly told: ToldAllergens }) {
  return (
    <p class="allergens">
      {said.told[of](noted.map((allergen) => said.names[allergen]))} {said.ask}
    </p>
  );
}
