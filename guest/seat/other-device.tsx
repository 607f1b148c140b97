import { seatWords as words } from '../../shared/language/en/seat.ts';
import { Notice } from '../../shared/ui/notice.tsx';
import { OwnLinkField } from '../room/own-link-field.tsx';
import { useRoom } from '../room/room.ts';

export function OtherDevice() {
  const { deviceKeeps } = useRoom();
  const { showLink: show, link: label, copy, copied, copyByHand: byHand } = words;
  return (
    <section class="stack-tight">
      <h2>{words.other}</h2>
      {!deviceKeeps && <Notice kind="caution">{words.keepsNothing}</Notice>}
      <p class="soft">{words.otherHint}</p>
      <OwnLinkField words={{ show, label, copy, copied, byHand }} />
    </section>
  );
}
