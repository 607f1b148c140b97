import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { describedBy, Field, type FieldWords } from './field.tsx';

interface TextAreaProps extends FieldWords {
  readonly value: string;
  readonly onInput: (value: string) => void;
  /** Lines shown when it is empty. */
  readonly rows?: number | undefined;
  readonly maxLength?: number | undefined;
  readonly onFocus?: (() => void) | undefined;
  readonly onBlur?: (() => void) | undefined;
}

/** Ruled paper that grows with what is written, so that nobody scrolls inside a small box. */
export function TextArea({ value, onInput, rows = 3, maxLength, onFocus, onBlur, ...words }: TextAreaProps) {
  const id = useId();
  const area = useRef<HTMLTextAreaElement>(null);
  // The height follows the text that has just been laid out.
  useLayoutEffect(() => {
    const element = area.current;
    // Where the browser sizes fields by their content, the style sheet has already done it.
    if (!element || CSS.supports('field-sizing', 'content')) return;
    element.style.blockSize = 'auto';
    element.style.blockSize = `${element.scrollHeight + element.offsetHeight - element.clientHeight}px`;
  }, [value]);
  return (
    <Field id={id} {...words}>
      <textarea
        class="field-input field-paper"
        id={id}
        ref={area}
        rows={rows}
        value={value}
        maxLength={maxLength}
        dir="auto"
        aria-invalid={words.error ? true : undefined}
        aria-describedby={describedBy(id, words)}
        onInput={(event) => onInput(event.currentTarget.value)}
        onFocus={onFocus}
        onBlur={onBlur}
      />
    </Field>
  );
}
