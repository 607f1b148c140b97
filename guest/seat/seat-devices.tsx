import { seatWords } from '../../shared/language/en/seat.ts';
import { timeOfDay } from '../../shared/language/wall-clock.ts';
import { Button } from '../../shared/ui/button.tsx';
import type { DeviceSeen, DevicesView } from '../../shared/wire/devices.ts';
import { locale } from '../language.ts';
import { useRoom } from '../room/room.ts';

const words = seatWords.devices;

/** Every device that has this seat, and the guest's four words. */
export function SeatDevices() {
  const { follower } = useRoom();
  const view = follower.devices.value;
  if (!view?.opens) return null;
  return (
    <>
      <section class="stack-tight">
        <h2>{words.title}</h2>
        <p class="soft">{words.hint}</p>
        <ul class="plain-list">
          {view.devices.map((device) => (
            <li key={device.device} class="device-line">
              <DeviceLine device={device} view={view} />
            </li>
          ))}
        </ul>
      </section>
      <WordsAgain view={view} />
    </>
  );
}

function DeviceLine({ device, view }: { readonly device: DeviceSeen; readonly view: DevicesView }) {
  const room = useRoom();
  const own = device.device === view.own;
  const name = nameOf(device);
  const end = async (): Promise<void> => {
    if (await room.askAboutDevices({ type: 'End', device: device.device })) room.status.say(words.ended);
  };
  return (
    <>
      <span>{own ? `${name} (${words.own})` : name}</span>
      {!own && (
        <Button kind="quiet" label={words.endOf(name)} onPress={() => void end()}>
          {words.end}
        </Button>
      )}
    </>
  );
}

function nameOf({ came, at, link, opens }: DeviceSeen): string {
  return [
    link ? words.links[came] : words.came[came],
    ...(at === 0 ? [] : [words.at(timeOfDay(at, locale))]),
    ...(opens || link ? [] : [words.withoutNotes]),
  ].join(', ');
}

/** Where they were shown once they are found again; they are on no server. */
function WordsAgain({ view }: { readonly view: DevicesView }) {
  const { seat } = useRoom();
  const kept = seat.value.words;
  return (
    <section class="stack-tight">
      <h2>{seatWords.fourWords.title}</h2>
      {kept === undefined || !view.words ? (
        <p class="soft">{seatWords.fourWords.again}</p>
      ) : (
        <p>
          <strong>{kept.join(' ')}</strong>
        </p>
      )}
      <p class="soft small">{seatWords.fourWords.why}</p>
      <FreshWords />
    </section>
  );
}

function FreshWords() {
  const makeWords = useNewWords();
  return <Button onPress={() => void makeWords()}>{seatWords.fourWords.fresh}</Button>;
}

/** Makes four words and keeps them on this device, to be looked at. */
export function useNewWords(): () => Promise<void> {
  const room = useRoom();
  return async () => {
    const made = await room.askAboutDevices({ type: 'MakeWords', language: locale.slice(0, 2) });
    if (made?.words !== undefined) room.remember({ words: made.words, wordsRead: false });
  };
}
