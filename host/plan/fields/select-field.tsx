import { useId } from 'preact/hooks';
import { describedBy, Field, type FieldWords } from '../../../shared/ui/field.tsx';

interface SelectFieldProps extends FieldWords {
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly onChoose: (value: string) => void;
}

/** One of many, by the device's own list. */
export function SelectField({ value, options, onChoose, ...said }: SelectFieldProps) {
  const id = useId();
  return (
    <Field id={id} {...said}>
      <select
        class="field-input"
        id={id}
        value={value}
        aria-describedby={describedBy(id, said)}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value} selected={option.value === value}>
            {option.label}
          </option>
        ))}
      </select>
    </Field>
  );
}
