import { useSignal } from '@preact/signals';
import { Button } from '../../shared/ui/button.tsx';
import { QrCode } from '../../shared/ui/qr-code.tsx';
import type { HttpAnswer } from '../../shared/wire/answer.ts';
import type { IssuedKey } from '../../shared/wire/http.ts';
import { sentenceFor } from '../language.ts';

interface IssuedLinkProps {
  readonly name: string;
  /** What it gives, said before it is made. */
  readonly hint: string;
  /** What scanning does, for those who do not see the square. */
  readonly label: string;
  readonly issue: () => Promise<HttpAnswer<IssuedKey>>;
  readonly linkOf: (key: string) => string;
}

/** A link that is made when it is asked for, and shown only here: whoever has it has what it opens. */
export function IssuedLink({ name, hint, label, issue, linkOf }: IssuedLinkProps) {
  const link = useSignal<string | null>(null);
  const trouble = useSignal<string | null>(null);
  const busy = useSignal(false);
  const make = async (): Promise<void> => {
    busy.value = true;
    const answer = await issue();
    busy.value = false;
    trouble.value = answer.ok ? null : sentenceFor(answer.code);
    if (answer.ok) link.value = linkOf(answer.body.key);
  };
  if (link.value !== null) {
    return (
      <div class="issued">
        <div>
          <p class="field-label">{name}</p>
          <p class="small soft">{hint}</p>
          <p class="issued-link small" dir="ltr" translate={false}>
            {link.value}
          </p>
        </div>
        <QrCode of={link.value} label={label} />
      </div>
    );
  }
  return (
    <div class="stack-tight">
      <p class="small soft">{hint}</p>
      <p>
        <Button busy={busy.value} onPress={() => void make()}>
          {name}
        </Button>
      </p>
      {trouble.value && <p class="field-error">{trouble.value}</p>}
    </div>
  );
}
