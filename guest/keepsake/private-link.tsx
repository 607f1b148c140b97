import { useEffect, useState } from 'preact/hooks';
import { askToLast } from '../../shared/page/lasting-storage.ts';
import { requestServer } from '../../shared/page/server-request.ts';
import { forgetSeat } from '../../shared/seats/kept-seats.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { forgetNotes } from '../page/device-storage.ts';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { OwnLinkField } from '../room/own-link-field.tsx';
import { useRoom } from '../room/room.ts';
import { homeWords } from './language.ts';

/** The lasting way back to this page, hidden until it is asked for; and the way to be rid of everything. */
export function PrivateLink({ onGone }: { readonly onGone: (said: string) => void }) {
  const { seat, status } = useRoom();
  const [asking, setAsking] = useState(false);
  const [busy, setBusy] = useState(false);
  const words = homeWords.link;
  useEffect(() => askToLast(), []);

  const remove = async (): Promise<void> => {
    const { tasting, key } = seat.peek();
    setBusy(true);
    const answer = await requestServer(`/api/keepsake/${encodeURIComponent(tasting)}`, {
      key,
      method: 'DELETE',
    });
    setBusy(false);
    setAsking(false);
    if (!answer.ok) return status.say(words.notNow(refusalSentence(answer.code)));
    forgetNotes(seat.peek());
    forgetSeat(seat.peek());
    onGone(words.gone);
  };

  return (
    <section class="stack-tight">
      <h2>{words.title}</h2>
      <p class="soft">{words.hint}</p>
      <OwnLinkField words={{ ...words, copied: homeWords.take.copied }} />
      <Button kind="danger" onPress={() => setAsking(true)}>
        {words.remove}
      </Button>
      {asking && (
        <Dialog
          title={words.sure}
          onClose={() => setAsking(false)}
          close={words.keep}
          actions={
            <Button kind="danger" busy={busy} onPress={() => void remove()}>
              {words.remove}
            </Button>
          }
        >
          <p>{words.sureBody}</p>
        </Dialog>
      )}
    </section>
  );
}
