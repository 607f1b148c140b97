import { useState } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import { newRespondent } from '../../shared/seats/new-id.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import type { KitReport, KitTry } from '../../shared/wire/kit-try.ts';
import { type KeptKit, keepKit, readKit } from './kit-storage.ts';
import { refusalSentence, words } from './language.ts';

type Said =
  | { readonly is: 'nothing' | 'told' | 'taken-back' }
  | { readonly is: 'problem'; readonly why: string };

interface TellHostProps {
  readonly code: string;
  readonly tried: KitTry;
}

/** How it went goes to the host by a tap of the guest and by nothing else, and can be taken back. */
export function TellHost({ code, tried }: TellHostProps) {
  const [kit, setKit] = useState<KeptKit>(
    () => readKit(code) ?? { id: newRespondent(), name: '', told: false },
  );
  const [said, setSaid] = useState<Said>({ is: 'nothing' });
  const [busy, setBusy] = useState(false);
  const send = async (told: KitReport['told']): Promise<void> => {
    setBusy(true);
    const body: KitReport = { id: kit.id, told };
    const path = `/api/invitations/${encodeURIComponent(code)}/kit`;
    const answer = await requestServer<null>(path, { method: 'PUT', body });
    setBusy(false);
    if (!answer.ok) return setSaid({ is: 'problem', why: refusalSentence(answer.code) });
    const next = { ...kit, told: told !== null };
    setKit(next);
    keepKit(code, next);
    setSaid({ is: told === null ? 'taken-back' : 'told' });
  };
  const tell = (): void => {
    const name = kit.name.trim();
    if (name === '') setSaid({ is: 'problem', why: words.noName });
    else void send({ name, tried });
  };
  return (
    <section class="stack-tight" aria-labelledby="tell">
      <h2 id="tell">{words.tell}</h2>
      <p class="soft">{words.tellHint}</p>
      <TextField
        label={words.name}
        hint={words.nameHint}
        value={kit.name}
        autocomplete="given-name"
        maxLength={60}
        onInput={(name) => setKit({ ...kit, name })}
      />
      <div role="status">
        {said.is === 'told' && <Notice kind="info">{words.told}</Notice>}
        {said.is === 'taken-back' && <Notice kind="info">{words.takenBack}</Notice>}
        {said.is === 'problem' && <Notice kind="caution">{said.why}</Notice>}
      </div>
      <Button kind="primary" size="big" busy={busy} onPress={tell}>
        {kit.told ? words.sendAgain : words.send}
      </Button>
      {kit.told && (
        <Button kind="quiet" busy={busy} onPress={() => void send(null)}>
          {words.takeBack}
        </Button>
      )}
    </section>
  );
}
