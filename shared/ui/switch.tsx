import { useId } from 'preact/hooks';

interface SwitchProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly on: boolean;
  readonly onTurn: (on: boolean) => void;
  readonly disabled?: boolean | undefined;
}

/** On or off, taking effect at once. */
export function Switch({ label, hint, on, onTurn, disabled }: SwitchProps) {
  const id = useId();
  return (
    <label class="switch">
      <span class="choice-words">
        <span id={`${id}-name`}>{label}</span>
        {hint && (
          <span class="choice-hint" id={`${id}-hint`}>
            {hint}
          </span>
        )}
      </span>
      <input
        type="checkbox"
        // biome-ignore lint/a11y/useAriaPropsForRole: a checkbox says it itself, and ARIA in HTML forbids it twice
        role="switch"
        checked={on}
        aria-labelledby={`${id}-name`}
        aria-describedby={hint && `${id}-hint`}
        disabled={disabled}
        onChange={(event) => onTurn(event.currentTarget.checked)}
      />
    </label>
  );
}
