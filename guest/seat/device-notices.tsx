import { useEffect, useState } from 'preact/hooks';
import { seatWords } from '../../shared/language/en/seat.ts';
import { Button } from '../../shared/ui/button.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import type { DeviceSeen, DevicesView } from '../../shared/wire/devices.ts';
import { useRoom } from '../room/room.ts';
import { useNewWords } from './seat-devices.tsx';

const words = seatWords.devices;

/** A device that asks for the notes, this one asking for them, or four words that are still to be made. */
export function DeviceNotices({ view }: { readonly view: DevicesView }) {
  const makeWords = useNewWords();
  const wanted = view.opens && !view.words;
  // Asked once for each time that there are none.
  useEffect(() => {
    if (wanted) void makeWords();
  }, [wanted]);
  if (!view.opens) return <AskForNotes view={view} />;
  return view.devices
    .filter(({ number }) => number !== null)
    .map((device) => <LetIn key={device.device} device={device} />);
}

function LetIn({ device: { device, number } }: { readonly device: DeviceSeen }) {
  const room = useRoom();
  const answer = async (type: 'LetIn' | 'End', said: string): Promise<void> => {
    if (await room.askAboutDevices({ type, device })) room.status.say(said);
  };
  return (
    <aside class="device-notice stack-tight" aria-label={words.title}>
      <p role="alert">
        <strong>{words.asks}</strong> {number !== null && words.shows(number)}
      </p>
      <div class="device-answers">
        <Button kind="primary" onPress={() => void answer('LetIn', words.letIn)}>
          {words.yes}
        </Button>
        <Button kind="danger" onPress={() => void answer('End', words.ended)}>
          {words.no}
        </Button>
      </div>
    </aside>
  );
}

function AskForNotes({ view }: { readonly view: DevicesView }) {
  const room = useRoom();
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  if (view.number === null) return null;
  const say = async (): Promise<void> => {
    if (said.trim() === '' || busy) return;
    setBusy(true);
    await room.askAboutDevices({ type: 'SayWords', words: said });
    setBusy(false);
  };
  return (
    <aside class="device-notice stack-tight" aria-label={words.title}>
      <p>
        <strong>{words.waits}</strong>
      </p>
      <p>{words.onOther(view.number)}</p>
      {view.words && view.tries.left === 0 && <p>{words.none}</p>}
      {view.words && view.tries.left > 0 && (
        <details>
          <summary>{words.orWords}</summary>
          <form
            class="stack-tight"
            onSubmit={(event) => {
              event.preventDefault();
              void say();
            }}
          >
            <TextField
              label={words.field}
              value={said}
              onInput={setSaid}
              autocomplete="off"
              maxLength={120}
            />
            <button type="submit" class="button" aria-busy={busy ? true : undefined}>
              {words.say}
            </button>
          </form>
        </details>
      )}
      <p class="soft small">{words.meanwhile}</p>
    </aside>
  );
}

/** The words that this device has made, until they were looked at: written down once, and on no server. */
export function FirstWords() {
  const { follower, remember, seat } = useRoom();
  const { words: made, wordsRead } = seat.value;
  if (made === undefined || wordsRead !== false || !follower.devices.value?.opens) return null;
  return (
    <aside class="device-notice stack-tight" aria-label={words.title}>
      <p>
        <strong>{seatWords.fourWords.title}:</strong> <strong>{made.join(' ')}</strong>
      </p>
      <p class="small">{seatWords.fourWords.why}</p>
      <Button onPress={() => remember({ wordsRead: true })}>{seatWords.fourWords.seen}</Button>
    </aside>
  );
}
