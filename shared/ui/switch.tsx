interface SwitchProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly on: boolean;
  readonly onTurn: (on: boolean) => void;
  readonly disabled?: boolean | undefined;
}

/** On or off, taking effect at once. */
export function Switch({ label, hint, on, onTurn, disabled }: SwitchProps) {
  return (
    <label class="switch">
      <span class="choice-words">
        {label}
        {hint && <span class="choice-hint">{hint}</span>}
      </span>
      <input
        type="checkbox"
        role="switch"
        checked={on}
        aria-checked={on}
        disabled={disabled}
        onChange={(event) => onTurn(event.currentTarget.checked)}
      />
    </label>
  );
}
