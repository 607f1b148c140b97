import type { Allergen } from '../../core/drinks/allergens.ts';
import { allergenWords as words } from '../language/en/allergens.ts';
import { Button } from './button.tsx';

interface AllergenPickProps {
  readonly legend: string;
  readonly hint: string;
  readonly picked: readonly Allergen[];
  readonly onPick: (picked: readonly Allergen[]) => void;
}

const all = Object.keys(words.names) as readonly Allergen[];

/** Any of the fourteen, each a button that stays down; in the order of the law. */
export function AllergenPick({ legend, hint, picked, onPick }: AllergenPickProps) {
  const turn = (allergen: Allergen): void =>
    onPick(all.filter((each) => picked.includes(each) !== (each === allergen)));
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      <p class="choice-hint">{hint}</p>
      <div class="row">
        {all.map((allergen) => (
          <Button key={allergen} pressed={picked.includes(allergen)} onPress={() => turn(allergen)}>
            {words.names[allergen]}
          </Button>
        ))}
      </div>
    </fieldset>
  );
}
