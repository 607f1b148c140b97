import { useEffect, useRef, useState } from 'preact/hooks';
import { codeLength, tidyCode } from '../../shared/seats/seat-link.ts';
import { Notice } from '../../shared/ui/notice.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import { words } from './language.ts';

interface CodePageProps {
  readonly problem: string | null;
  readonly onCode: (code: string) => void;
}

/** One field, which has the keyboard from the start: a television has a remote control and no pointer. */
export function CodePage({ problem, onCode }: CodePageProps) {
  const [code, setCode] = useState('');
  const [short, setShort] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector('input')?.focus(), []);
  return (
    <main class="screen-page screen-door">
      <h1>{words.door.title}</h1>
      <p class="screen-lead">{words.door.lead}</p>
      {problem !== null && <Notice kind="info">{problem}</Notice>}
      <form
        ref={form}
        class="screen-form"
        onSubmit={(event) => {
          event.preventDefault();
          const tidy = tidyCode(code);
          if (tidy.length < codeLength) setShort(true);
          else onCode(tidy);
        }}
      >
        <TextField
          label={words.door.code}
          hint={words.door.codeHint}
          error={short ? words.door.codeShort : undefined}
          value={code}
          onInput={(typed) => {
            setCode(typed);
            setShort(false);
          }}
          autocomplete="off"
          maxLength={20}
        />
        <button type="submit" class="button button-big button-primary">
          {words.door.go}
        </button>
      </form>
    </main>
  );
}
