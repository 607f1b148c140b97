import { strongestAbv } from '../../../core/tasting.ts';
import { number } from '../../numbers.ts';
import { words } from '../words.ts';
import { NumberField } from './number-field.tsx';

interface StrengthFieldProps {
  readonly abv: number | undefined;
  readonly onAbv: (abv: number | undefined) => void;
}

/** Strength in % vol. */
export function StrengthField({ abv, onAbv }: StrengthFieldProps) {
  return (
    <NumberField
      label={words.pour.abv}
      value={abv}
      least={0}
      most={strongestAbv}
      optional
      wrong={strengthWrong}
      onNumber={onAbv}
    />
  );
}

/** Above what any drink holds, the number may be US proof, which is twice the per cent by volume (27 CFR 30.11). */
function strengthWrong(text: string): string {
  const value = Number(text.trim().replace(',', '.'));
  const asProof = value > strongestAbv && value <= 2 * strongestAbv;
  return asProof ? words.pour.abvProof(number(value), number(value / 2)) : words.pour.abvWrong(strongestAbv);
}
