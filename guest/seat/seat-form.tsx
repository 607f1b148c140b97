import { useRef, useState } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import { newCommandId, newSeatKey } from '../../shared/seats/new-id.ts';
import { Choice, optionsOf } from '../../shared/ui/choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import type { TakeSeatRequest } from '../../shared/wire/commands.ts';
import type { TakenSeat } from '../../shared/wire/http.ts';
import { words } from '../language.ts';
import { refusalSentence } from '../page/refusal-sentence.ts';

interface SeatFormProps {
  readonly code: string;
  readonly onTaken: (taken: TakenSeat, key: string) => void;
}

const longestName = 60;

export function SeatForm({ code, onTaken }: SeatFormProps) {
  const [name, setName] = useState('');
  const [hand, setHand] = useState<'left' | 'right'>('right');
  const [where, setWhere] = useState<'table' | 'home'>('table');
  const [error, setError] = useState<string>();
  const [refused, setRefused] = useState<string>();
  const [busy, setBusy] = useState(false);
  // Made once: asking again after a lost answer finds the same seat, not a second one.
  const asked = useRef({ id: newCommandId(), key: newSeatKey() });

  const sit = async (): Promise<void> => {
    const wrong = nameError(name);
    setError(wrong);
    if (wrong !== undefined || busy) return;
    setBusy(true);
    setRefused(undefined);
    const request: TakeSeatRequest = {
      ...asked.current,
      code,
      name: name.trim(),
      leftHanded: hand === 'left',
      remote: where === 'home',
    };
    const answer = await askPatiently(request);
    setBusy(false);
    if (answer.ok) onTaken(answer.body, asked.current.key);
    else {
      setRefused(refusalSentence(answer.code));
      // The server remembers what it answered to this id; a changed wish needs a new one.
      if (answer.code !== 'no-answer') asked.current = { id: newCommandId(), key: newSeatKey() };
    }
  };

  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void sit();
      }}
    >
      <TextField
        label={words.invitation.name}
        hint={words.invitation.nameHint}
        error={error}
        value={name}
        onInput={(typed) => {
          setName(typed);
          setError(undefined);
        }}
        autocomplete="given-name"
      />
      <Choice
        legend={words.invitation.hand}
        across
        options={optionsOf(['right', 'left'], words.invitation)}
        value={hand}
        onChoose={setHand}
      />
      <Choice
        legend={words.invitation.where}
        across
        options={[
          { value: 'table', label: words.invitation.atTable },
          { value: 'home', label: words.invitation.atHome },
        ]}
        value={where}
        onChoose={setWhere}
      />
      <div role="alert">{refused && <Notice kind="caution">{refused}</Notice>}</div>
      <button type="submit" class="button button-big button-primary" aria-busy={busy ? true : undefined}>
        {words.invitation.sit}
      </button>
    </form>
  );
}

export function nameError(name: string): string | undefined {
  const tidy = name.trim();
  if (tidy === '') return words.invitation.nameMissing;
  return tidy.length > longestName ? words.invitation.nameLong : undefined;
}

async function askPatiently(request: TakeSeatRequest) {
  const once = () => requestServer<TakenSeat>('/api/seats', { body: request });
  const first = await once();
  return first.ok || first.code !== 'no-answer' ? first : once();
}
