import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Call } from '../../shared/call/call.ts';
import { nameOfPeer, troubleSentence, whyOut } from '../../shared/call/call-words.ts';
import { PeerTile, Picture, useSpeaking, Voices } from '../../shared/call/pictures.tsx';
import { callWords as words } from '../../shared/language/en/call.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { camera, microphone, people } from '../../shared/ui/strokes.ts';
import type { SeatView } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';
import { CallSheet } from './call-sheet.tsx';
import { openGuestCall } from './guest-call.ts';
import { PressToSpeak } from './press-to-speak.tsx';

/** The call on the one phone of a guest at home: a strip above the room, a dot while there is no place for it. */
export function CallStrip() {
  const { follower, seat } = useRoom();
  const own = follower.seat.value;
  // The cautions come first.
  return own?.presence === 'seated' && seat.value.cautioned ? <Strip own={own} /> : null;
}

function Strip({ own }: { readonly own: SeatView }) {
  const { follower, lock } = useRoom();
  const { call, close } = useMemo(() => openGuestCall(follower, own.seat), [follower, own.seat]);
  useEffect(() => close, [close]);
  const [hidden, setHidden] = useState(false);
  const place = call.place.value;
  const { pictures } = call.gates.value;
  const small = hidden || lock.writing.value || pictures === 'dark';
  return (
    <>
      {place.at === 'in' && <Voices call={call} />}
      {small ? (
        <CallDot call={call} onShow={() => setHidden(false)} />
      ) : place.at === 'in' ? (
        <InCall call={call} onHide={() => setHidden(true)} />
      ) : (
        <OutOfCall call={call} onHide={() => setHidden(true)} />
      )}
    </>
  );
}

interface StripProps {
  readonly call: Call;
  readonly onHide: () => void;
}

/** With the keyboard up, with eyes closed, and for who has hidden it: one thing to tap, beside the glass in hand. */
function CallDot({ call, onShow }: { readonly call: Call; readonly onShow: () => void }) {
  const place = call.place.value;
  const open = call.gates.value.microphone !== 'nobody';
  return (
    <aside class="call-dot" aria-label={words.title}>
      <button
        type="button"
        class="button button-quiet"
        aria-label={`${words.show}${place.at === 'in' ? `, ${open ? words.microphone.open : words.microphone.closed}` : ''}`}
        data-open={open ? 'true' : undefined}
        onClick={onShow}
      >
        <Icon of={place.at === 'in' ? microphone : people} />
      </button>
    </aside>
  );
}

function OutOfCall({ call, onHide }: StripProps) {
  const { follower } = useRoom();
  const stage = follower.stage.value;
  const place = call.place.value;
  const others = call.others.value;
  const why = whyOut(place);
  const link = why === null ? null : (stage?.callLink ?? null);
  return (
    <aside class="call-strip call-out" aria-label={words.title}>
      <Button busy={place.at === 'joining'} onPress={() => void call.join()}>
        <Icon of={camera} />
        {place.at === 'joining' ? words.joining : words.join}
      </Button>
      <Button kind="quiet" onPress={onHide}>
        {words.hide}
      </Button>
      {(why !== null || others.length > 0) && (
        <p class="small soft" role={why === null ? undefined : 'alert'}>
          {why ?? words.inCall(others.map(nameOfPeer))}
          {link !== null && (
            <>
              {' '}
              <a href={link} target="_blank" rel="noreferrer noopener">
                {words.other}
              </a>
            </>
          )}
        </p>
      )}
    </aside>
  );
}

function InCall({ call, onHide }: StripProps) {
  const speaking = useSpeaking(call);
  const [more, setMore] = useState(false);
  const others = call.others.value;
  const large = call.large.value;
  const { microphone: to, camera: films, mayOpen, mayPress, pictures } = call.gates.value;
  const own = call.media.tracks.value.camera;
  const trouble = troubleSentence(call.media.troubles.value);
  const said = trouble ?? (call.voiceOnly.value === 'poor-line' ? words.poorLine : null);
  return (
    <aside class="call-strip" aria-label={words.title} data-pictures={pictures}>
      {pictures === 'shown' ? (
        <div class="call-pictures">
          {large && <PeerTile call={call} peer={large} speaks={speaking.has(large.peer)} large />}
          <div class="call-others">
            {others
              .filter(({ peer, role }) => peer !== large?.peer && role !== 'screen')
              .map((peer) => (
                <PeerTile key={peer.peer} call={call} peer={peer} speaks={speaking.has(peer.peer)} />
              ))}
            {own !== null && films && (
              <figure class="call-tile">
                <Picture track={own} mirrored />
                <figcaption>{words.here}</figcaption>
              </figure>
            )}
          </div>
        </div>
      ) : (
        <p class="call-voice-line">{large && words.voiceNow(nameOfPeer(large))}</p>
      )}
      <div class="call-tools">
        {mayPress ? (
          <PressToSpeak call={call} />
        ) : (
          <Button
            kind="quiet"
            pressed={to === 'all'}
            disabled={to !== 'all' && !mayOpen.microphone}
            onPress={() => void call.turnOn('microphone', to !== 'all')}
          >
            <Icon of={microphone} />
            {to === 'all' ? words.microphone.open : words.microphone.closed}
          </Button>
        )}
        <Button
          kind="quiet"
          pressed={films}
          disabled={!films && !mayOpen.camera}
          onPress={() => void call.turnOn('camera', !films)}
        >
          <Icon of={camera} />
          {films ? words.camera.open : words.camera.closed}
        </Button>
        <Button kind="quiet" onPress={onHide}>
          {words.hide}
        </Button>
        <Button kind="quiet" onPress={() => setMore(true)}>
          {words.more}
        </Button>
      </div>
      {said !== null && (
        <p class="call-trouble small" role="alert">
          {said}
        </p>
      )}
      {more && <CallSheet call={call} onClose={() => setMore(false)} />}
    </aside>
  );
}
