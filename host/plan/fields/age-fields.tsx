import type { Pour } from '../../../core/tasting.ts';
import { words } from '../words.ts';
import { NumberField } from './number-field.tsx';

interface AgeFieldsProps {
  readonly pour: Pick<Pour, 'ageYears' | 'vintage'>;
  readonly set: (key: 'ageYears' | 'vintage', value: number | undefined) => void;
}

/** How old it is, by years or by its year. */
export function AgeFields({ pour, set }: AgeFieldsProps) {
  const said = words.pour;
  return (
    <>
      <NumberField
        label={said.age}
        value={pour.ageYears}
        least={0}
        most={150}
        optional
        wrong={said.ageWrong}
        onNumber={(age) => set('ageYears', age)}
      />
      <NumberField
        label={said.vintage}
        value={pour.vintage}
        least={1700}
        most={2200}
        whole
        optional
        wrong={said.vintageWrong}
        onNumber={(vintage) => set('vintage', vintage)}
      />
    </>
  );
}
