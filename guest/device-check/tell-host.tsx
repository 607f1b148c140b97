import { useState } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import { newRespondent } from '../../shared/seats/new-id.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import type { DeviceReport, DeviceResults } from '../../shared/wire/device-check.ts';
import { refusalSentence } from '../page/door-words.ts';
import { words } from './language.ts';
import { type KeptReport, keepReport, readReport } from './report-storage.ts';

type Said =
  | { readonly is: 'nothing' | 'told' | 'taken-back' }
  | { readonly is: 'problem'; readonly why: string };

interface TellHostProps {
  readonly code: string;
  readonly tried: DeviceResults;
}

/** How it went goes to the host by a tap of the guest and by nothing else, and can be taken back. */
export function TellHost({ code, tried }: TellHostProps) {
  const [report, setReport] = useState<KeptReport>(
    () => readReport(code) ?? { id: newRespondent(), name: '', told: false },
  );
  const [said, setSaid] = useState<Said>({ is: 'nothing' });
  const [busy, setBusy] = useState(false);
  const send = async (told: DeviceReport['told']): Promise<void> => {
    setBusy(true);
    const body: DeviceReport = { id: report.id, told };
    const path = `/api/invitations/${encodeURIComponent(code)}/kit`;
    const answer = await requestServer<null>(path, { method: 'PUT', body });
    setBusy(false);
    if (!answer.ok) return setSaid({ is: 'problem', why: refusalSentence(answer.code) });
    const next = { ...report, told: told !== null };
    setReport(next);
    keepReport(code, next);
    setSaid({ is: told === null ? 'taken-back' : 'told' });
  };
  const tell = (): void => {
    const name = report.name.trim();
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
        value={report.name}
        autocomplete="given-name"
        maxLength={60}
        onInput={(name) => setReport({ ...report, name })}
      />
      <div role="status">
        {said.is === 'told' && <Notice kind="info">{words.told}</Notice>}
        {said.is === 'taken-back' && <Notice kind="info">{words.takenBack}</Notice>}
        {said.is === 'problem' && <Notice kind="caution">{said.why}</Notice>}
      </div>
      <Button kind="primary" size="big" busy={busy} onPress={tell}>
        {report.told ? words.sendAgain : words.send}
      </Button>
      {report.told && (
        <Button kind="quiet" busy={busy} onPress={() => void send(null)}>
          {words.takeBack}
        </Button>
      )}
    </section>
  );
}
