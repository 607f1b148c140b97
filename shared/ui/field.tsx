import type { ComponentChildren } from 'preact';

export interface FieldWords {
  readonly label: string;
  /** What helps before typing. */
  readonly hint?: string | undefined;
  /** What is wrong and what to do about it. */
  readonly error?: string | undefined;
}

interface FieldProps extends FieldWords {
  readonly id: string;
  readonly children: ComponentChildren;
}

/** The ids that describe a field, in the order in which they are read; undefined when there is nothing to read. */
export function describedBy(id: string, { hint, error }: FieldWords): string | undefined {
  const parts = [...(error ? [`${id}-error`] : []), ...(hint ? [`${id}-hint`] : [])];
  return parts.length > 0 ? parts.join(' ') : undefined;
}

/** Label above, hint between, the field, and what is wrong below it. */
export function Field({ id, label, hint, error, children }: FieldProps) {
  return (
    <div class="field">
      <label class="field-label" for={id}>
        {label}
      </label>
      {hint && (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {children}
      {error && (
        <p class="field-error" id={`${id}-error`}>
          {error}
        </p>
      )}
    </div>
  );
}
