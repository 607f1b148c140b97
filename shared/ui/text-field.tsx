import { useId } from 'preact/hooks';
import { describedBy, Field, type FieldWords } from './field.tsx';

/** A table, because the types of attributes know each kind of input by its literal. */
const kinds = {
  text: { type: 'text' },
  search: { type: 'search' },
  email: { type: 'email' },
  url: { type: 'url' },
  password: { type: 'password' },
  date: { type: 'date' },
  time: { type: 'time' },
  'datetime-local': { type: 'datetime-local' },
} as const;

interface TextFieldProps extends FieldWords {
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly type?: keyof typeof kinds | undefined;
  /** Which keys a phone offers, apart from the type: whole numbers, numbers with a decimal separator. */
  readonly keys?: 'numeric' | 'decimal' | undefined;
  readonly autocomplete?: string | undefined;
  readonly maxLength?: number | undefined;
  readonly required?: boolean | undefined;
  readonly onFocus?: (() => void) | undefined;
  readonly onBlur?: (() => void) | undefined;
}

export function TextField(props: TextFieldProps) {
  const id = useId();
  const {
    value,
    onInput,
    type = 'text',
    keys,
    autocomplete,
    maxLength,
    required,
    onFocus,
    onBlur,
    ...words
  } = props;
  return (
    <Field id={id} {...words}>
      <input
        class="field-input"
        id={id}
        {...kinds[type]}
        value={value}
        inputMode={keys}
        autocomplete={autocomplete}
        maxLength={maxLength}
        required={required}
        dir="auto"
        aria-invalid={words.error ? true : undefined}
        aria-describedby={describedBy(id, words)}
        onFocus={onFocus}
        onBlur={onBlur}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
    </Field>
  );
}
