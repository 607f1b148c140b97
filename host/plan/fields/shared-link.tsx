import { useId, useRef } from 'preact/hooks';
import { Button } from '../../../shared/ui/button.tsx';
import { Field } from '../../../shared/ui/field.tsx';

interface SharedLinkProps {
  readonly label: string;
  readonly link: string;
  /** Words of the button. */
  readonly copy: string;
  /** False where the page may not use the clipboard, as over plain http: then the link is selected. */
  readonly onCopied: (copied: boolean) => void;
}

/** A link to hand on: to read, to select and to copy, never to change. */
export function SharedLink({ label, link, copy, onCopied }: SharedLinkProps) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const press = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(link);
      onCopied(true);
    } catch {
      field.current?.focus();
      field.current?.select();
      onCopied(false);
    }
  };
  return (
    <div class="shared-link">
      <Field id={id} label={label}>
        <input
          class="field-input"
          id={id}
          ref={field}
          value={link}
          readOnly
          dir="ltr"
          translate={false}
          onFocus={(event) => event.currentTarget.select()}
        />
      </Field>
      <Button onPress={() => void press()}>{copy}</Button>
    </div>
  );
}
