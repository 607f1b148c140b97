import { TextField } from '../../../shared/ui/text-field.tsx';
import { words } from '../words.ts';
import { useTypedText } from './typed-text.ts';

interface LinkFieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly value: string | undefined;
  readonly onLink: (link: string | undefined) => void;
}

const isLink = (text: string): boolean => /^https?:\/\/[^\s]+$/i.test(text.trim()) && text.length <= 500;

/** An address on the web; only whole ones reach the plan. */
export function LinkField({ label, hint, value, onLink }: LinkFieldProps) {
  const { text, setText, made, field } = useTypedText(value, (link) => link ?? '');
  const empty = text.trim() === '';
  return (
    <TextField
      label={label}
      hint={hint}
      type="url"
      {...field}
      value={text}
      maxLength={500}
      error={empty || isLink(text) ? undefined : words.evening.linkWrong}
      onInput={(typed) => {
        setText(typed);
        const now = typed.trim() === '' ? undefined : typed.trim();
        if (now !== undefined && !isLink(now)) return;
        made(now);
        onLink(now);
      }}
    />
  );
}
