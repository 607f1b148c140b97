import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly hint?: string | undefined;
  /** A picture before the words: an icon or a swatch. */
  readonly mark?: ComponentChildren;
}

/** Options by their values, each with its words from a sheet of messages. */
export const optionsOf = <const Value extends string>(
  values: readonly Value[],
  labels: Readonly<Record<NoInfer<Value>, string>>,
  hints?: Readonly<Record<NoInfer<Value>, string>>,
): ChoiceOption<Value>[] => values.map((value) => ({ value, label: labels[value], hint: hints?.[value] }));

interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly ChoiceOption<Value>[];
  readonly value: Value | undefined;
  readonly onChoose: (value: Value) => void;
  /** Side by side where there is room. */
  readonly across?: boolean | undefined;
}

/** One of a few, as cards large enough for a thumb. The mark of the chosen one is a glass seen from above, filled. */
export function Choice<Value extends string>({
  legend,
  options,
  value,
  onChoose,
  across,
}: ChoiceProps<Value>) {
  const name = useId();
  return (
    <fieldset class={across ? 'choice choice-across' : 'choice'}>
      <legend class="field-label">{legend}</legend>
      {options.map((option) => (
        <label class="choice-card" key={option.value}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => onChoose(option.value)}
          />
          {option.mark}
          <span class="choice-words">
            {option.label}
            {option.hint && <span class="choice-hint">{option.hint}</span>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
