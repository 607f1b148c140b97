import { useId, useState } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { copyText } from '../page/clipboard.ts';
import { useOwnLink } from '../room/own-link.ts';
import { useRoom } from '../room/room.ts';
import { seatWords } from './language.ts';

/** The link stays hidden until it is asked for: whoever photographs it has the seat. */
export function OtherDevice() {
  const { deviceKeeps, status } = useRoom();
  const [link, setLink] = useState<string>();
  const ownLink = useOwnLink();
  const id = useId();
  return (
    <section class="stack-tight">
      <h2>{seatWords.other}</h2>
      {!deviceKeeps && <Notice kind="caution">{seatWords.keepsNothing}</Notice>}
      <p class="soft">{seatWords.otherHint}</p>
      {link !== undefined ? (
        <>
          <label class="field-label" for={id}>
            {seatWords.link}
          </label>
          <textarea
            class="field-input seat-link"
            id={id}
            readOnly
            rows={4}
            value={link}
            onFocus={(event) => event.currentTarget.select()}
          />
          <Button
            onPress={async () => status.say((await copyText(link)) ? seatWords.copied : seatWords.copyByHand)}
          >
            {seatWords.copy}
          </Button>
        </>
      ) : (
        <Button onPress={async () => setLink(await ownLink())}>{seatWords.showLink}</Button>
      )}
    </section>
  );
}
