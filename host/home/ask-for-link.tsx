import { useSignal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { lazyComponent } from '../../shared/page/lazy-part.ts';
import { Button } from '../../shared/ui/button.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import type { HouseOffer } from '../../shared/wire/http.ts';
import type { HostKeys } from '../access/host-keys.ts';
import { keyLinkIn } from '../access/key-link.ts';
import { landingOf } from '../access/landing.ts';
import type { HostApi } from '../api.ts';
import { words } from '../language.ts';
import { goTo } from '../route.ts';
import { ownHousePart } from './own-house-part.ts';

/** Apart, for most servers offer nothing of the kind. */
const MakeHouse = lazyComponent(ownHousePart, (part) => part.MakeHouse);

interface AskForLinkProps {
  readonly api: HostApi;
  readonly keys: HostKeys;
  /** A key was there and does not open this server. */
  readonly wrong: boolean;
  readonly onTaken: (kept: boolean) => void;
}

/** The door of the host's app, for a device without a key. */
export function AskForLink({ api, keys, wrong, onTaken }: AskForLinkProps) {
  const pasted = useSignal('');
  const refused = useSignal(false);
  const [offer, setOffer] = useState<HouseOffer | null>(null);
  useEffect(() => {
    void api.houseOffer().then((answer) => answer.ok && setOffer(answer.body));
  }, [api]);
  const open = (): void => {
    const link = keyLinkIn(pasted.value);
    if (link === undefined) {
      refused.value = true;
      return;
    }
    const kept = keys.keep(link);
    if (link.to !== 'house') goTo(landingOf(link));
    onTaken(kept);
  };
  return (
    <main class="page page-narrow">
      <h1>{words.key.title}</h1>
      <p class="lead">{wrong ? words.key.wrong : words.key.lead}</p>
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          open();
        }}
      >
        <TextField
          label={words.key.field}
          hint={words.key.hint}
          error={refused.value ? words.key.notALink : undefined}
          value={pasted.value}
          autocomplete="off"
          onInput={(value) => {
            pasted.value = value;
            refused.value = false;
          }}
        />
        <div class="thumb-bar">
          <Button kind="primary" size="big" onPress={open}>
            {words.key.open}
          </Button>
        </div>
      </form>
      {offer && (
        <MakeHouse api={api} offer={offer} onMade={(key) => onTaken(keys.keep({ to: 'house', key }))} />
      )}
    </main>
  );
}
