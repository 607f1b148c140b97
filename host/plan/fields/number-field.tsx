import { numberAtStart } from '../../../core/planning/pour-list/numbers.ts';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { plainNumber } from '../words.ts';
import { useTypedText } from './typed-text.ts';

interface NumberFieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly value: number | undefined;
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean | undefined;
  /** Whether the field may be left empty. */
  readonly optional?: boolean | undefined;
  /** What is wrong and what to do, where the text is no such number; it may look at the text. */
  readonly wrong: string | ((text: string) => string);
  readonly onNumber: (value: number | undefined) => void;
}

type ReadNumber = { readonly ok: true; readonly value: number | undefined } | { readonly ok: false };

function readNumber(text: string, { least, most, whole, optional }: NumberFieldProps): ReadNumber {
  if (text.trim() === '') return optional ? { ok: true, value: undefined } : { ok: false };
  const read = numberAtStart(text);
  if (read === undefined || read.rest !== '' || (whole && !Number.isInteger(read.value)))
    return { ok: false };
  return read.value >= least && read.value <= most ? { ok: true, value: read.value } : { ok: false };
}

const shown = (value: number | undefined): string => (value === undefined ? '' : plainNumber(value));

/**
 * A number with a point or a comma. What is typed stays as it was typed; only numbers within the limits reach the
 * plan, and anything else is named below the field.
 */
export function NumberField(props: NumberFieldProps) {
  const { label, hint, value, whole, wrong, onNumber } = props;
  const { text, setText, made, field } = useTypedText(value, shown);
  const read = readNumber(text, props);
  return (
    <TextField
      label={label}
      hint={hint}
      {...field}
      value={text}
      keys={whole ? 'numeric' : 'decimal'}
      autocomplete="off"
      maxLength={20}
      error={read.ok ? undefined : typeof wrong === 'string' ? wrong : wrong(text)}
      onInput={(typed) => {
        setText(typed);
        const now = readNumber(typed, props);
        if (!now.ok) return;
        made(now.value);
        onNumber(now.value);
      }}
    />
  );
}
