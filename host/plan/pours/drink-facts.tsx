import type { Pour } from '../../../core/tasting.ts';
import { optionsOf } from '../../../shared/ui/choice.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { PourNumber } from '../fields/pour-number.tsx';
import { SelectField } from '../fields/select-field.tsx';
import { words } from '../words.ts';

export interface PourFields {
  readonly pour: Pour;
  /** Undefined takes the fact away. */
  readonly set: <Key extends keyof Pour>(key: Key, value: Pour[Key] | undefined) => void;
}

const peats = ['', '0', '1', '2', '3'] as const;
const wineKinds = ['', 'film-yeast', 'naturally-sweet', 'ice', 'liqueur', 'mistelle'] as const;
const colours = ['', 'white', 'rose', 'orange', 'red'] as const;

/** The facts that only this drink can have, and that the order asks for. */
export function DrinkFacts({ pour, set }: PourFields) {
  const said = words.pour;
  switch (pour.drink) {
    case 'spirit':
      return (
        <SelectField
          label={said.peat}
          value={pour.peat === undefined ? '' : String(pour.peat)}
          options={optionsOf(peats, said.peats)}
          onChoose={(value) => set('peat', value === '' ? undefined : Number(value))}
        />
      );
    case 'wine':
      return (
        <>
          <div class="plan-pair">
            <SelectField
              label={said.colour}
              value={pour.colour ?? ''}
              options={optionsOf(colours, said.colours)}
              onChoose={(value) =>
                set('colour', colours.find((each) => each !== '' && each === value) || undefined)
              }
            />
            <SelectField
              label={said.wineKind}
              value={pour.wineKind ?? (pour.fortified === true ? 'liqueur' : '')}
              options={optionsOf(wineKinds, said.wineKinds)}
              onChoose={(value) => {
                set('wineKind', wineKinds.find((each) => each !== '' && each === value) || undefined);
                if (pour.fortified !== undefined) set('fortified', undefined);
              }}
            />
            <PourNumber pour={pour} set={set} of="body" />
            <PourNumber pour={pour} set={set} of="tannin" />
            <PourNumber pour={pour} set={set} of="sugarGPerL" />
          </div>
          <Flag pour={pour} set={set} of="sparkling" />
        </>
      );
    case 'beer':
      return (
        <>
          <div class="plan-pair">
            <PourNumber pour={pour} set={set} of="srm" />
            <PourNumber pour={pour} set={set} of="ibu" />
          </div>
          <Flag pour={pour} set={set} of="sour" />
          <Flag pour={pour} set={set} of="smoked" />
        </>
      );
    default:
      return pour.drink satisfies never;
  }
}

function Flag({ pour, set, of }: PourFields & { readonly of: 'sparkling' | 'sour' | 'smoked' }) {
  return (
    <Switch label={words.pour[of]} on={pour[of] === true} onTurn={(on) => set(of, on ? true : undefined)} />
  );
}
