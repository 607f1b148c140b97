import { useSignal } from '@preact/signals';
import { choosingWords } from '../../shared/language/en/choosing.ts';
import { houseWords as words } from '../../shared/language/en/houses.ts';
import { Button } from '../../shared/ui/button.tsx';
import { QrCode } from '../../shared/ui/qr-code.tsx';
import type { HouseOffer } from '../../shared/wire/http.ts';
import { houseLink } from '../access/key-link.ts';
import type { HostApi } from '../api.ts';
import type { AppContext } from '../app-context.ts';
import { sentenceFor } from '../language.ts';
import { Fold } from '../plan/fields/fold.tsx';
import { SharedLink } from '../plan/fields/shared-link.tsx';

interface MakeHouseProps {
  readonly api: Pick<HostApi, 'makeHouse'>;
  readonly offer: HouseOffer;
  readonly onMade: (key: string) => void;
}

/** At the door, for whoever has no link. */
export function MakeHouse({ api, offer, onMade }: MakeHouseProps) {
  const busy = useSignal(false);
  const trouble = useSignal<string | null>(null);
  const make = async (): Promise<void> => {
    busy.value = true;
    const answer = await api.makeHouse(choosingWords.language);
    busy.value = false;
    if (answer.ok) return onMade(answer.body.key);
    trouble.value = sentenceFor(answer.code);
  };
  return (
    <section class="stack" aria-labelledby="own-house">
      <h2 id="own-house">{words.none}</h2>
      <p>{words.offer(offer.evenings, offer.seats)}</p>
      <Button busy={busy.value} onPress={() => void make()}>
        {words.make}
      </Button>
      <p class="field-error" role="status">
        {trouble.value}
      </p>
    </section>
  );
}

/** Among the evenings, for nobody else can give the link once more. Folded, for whoever looks on may not have it. */
export function KeepLink({ app }: { readonly app: AppContext }) {
  const key = app.keys.house();
  if (key === undefined) return null;
  const link = houseLink(window.location.origin, key, choosingWords.language);
  return (
    <section class="stack" aria-labelledby="keep-link">
      <h2 id="keep-link">{words.keep}</h2>
      <p>{words.why}</p>
      <Fold title={words.show}>
        <SharedLink
          label={words.link}
          link={link}
          copy={words.copy}
          onCopied={(copied) => app.status.say(copied ? words.copied : words.selected)}
        />
        <QrCode of={link} label={words.scan} />
      </Fold>
    </section>
  );
}
