import { useId, useState } from 'preact/hooks';
import { seatLink } from '../../shared/seats/seat-link.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { copyText } from '../page/clipboard.ts';
import { useRoom } from '../room/room.ts';
import { seatWords } from './language.ts';

/** The link stays hidden until it is asked for: whoever photographs it has the seat. */
export function OtherDevice() {
  const { deviceKeeps, seat, status } = useRoom();
  const [shown, setShown] = useState(false);
  const id = useId();
  const link = seatLink(window.location.origin, seat.value);
  return (
    <section class="stack-tight">
      <h2>{seatWords.other}</h2>
      {!deviceKeeps && <Notice kind="caution">{seatWords.keepsNothing}</Notice>}
      <p class="soft">{seatWords.otherHint}</p>
      {shown ? (
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
        <Button onPress={() => setShown(true)}>{seatWords.showLink}</Button>
      )}
    </section>
  );
}
