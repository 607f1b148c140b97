import { useState } from 'preact/hooks';
import type { GuestWords } from '../../shared/language/en/guest.ts';
import { codeLength, tidyCode } from '../../shared/seats/seat-link.ts';
import { TextField } from '../../shared/ui/text-field.tsx';

interface CodeFormProps {
  readonly class: string;
  readonly words: Pick<GuestWords['door'], 'code' | 'codeHint' | 'codeShort' | 'go'>;
  /** Whole, in capital letters, without spaces. */
  readonly onCode: (code: string) => void;
}

/** The code of an evening, typed on a phone or with the remote control of a television. */
export function CodeForm({ class: look, words, onCode }: CodeFormProps) {
  const [code, setCode] = useState('');
  const [short, setShort] = useState(false);
  return (
    <form
      class={look}
      onSubmit={(event) => {
        event.preventDefault();
        const tidy = tidyCode(code);
        if (tidy.length < codeLength) setShort(true);
        else onCode(tidy);
      }}
    >
      <TextField
        label={words.code}
        hint={words.codeHint}
        error={short ? words.codeShort : undefined}
        value={code}
        onInput={(typed) => {
          setCode(typed);
          setShort(false);
        }}
        autocomplete="off"
        maxLength={20}
      />
      <button type="submit" class="button button-big button-primary">
        {words.go}
      </button>
    </form>
  );
}
