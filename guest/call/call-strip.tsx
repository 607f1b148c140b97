import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Call } from '../../shared/call/call.ts';
import { failureSentence, nameOfPeer, whyOut } from '../../shared/call/call-words.ts';
import { DeviceButton } from '../../shared/call/device-button.tsx';
import { PeerTile, Picture, useSpeaking, Voices } from '../../shared/call/pictures.tsx';
import { callWords as words } from '../../shared/language/en/call.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { camera, microphone, people } from '../../shared/ui/strokes.ts';
import type { SeatView } from '../../shared/wire/views.ts';
import { useDarkFrame } from '../page/dark-frame.ts';
import { PageTitle } from '../page/page-title.tsx';
import { isCallOnly, useRoom } from '../room/room.ts';
import { CallSheet } from './call-sheet.tsx';
import { openGuestCall } from './guest-call.ts';
import { PressToSpeak } from './press-to-speak.tsx';

/** The call on the one phone of a guest at home: a strip above the room, a dot while there is no place for it. */
export function CallStrip({ own }: { readonly own: SeatView }) {
  const room = useRoom();
  const { follower, lock } = room;
  const { call, close } = useMemo(() => openGuestCall(follower, own.seat), [follower, own.seat]);
  useEffect(() => close, [close]);
  const [hidden, setHidden] = useState(false);
  const place = call.place.value;
  const { pictures } = call.gates.value;
  const alone = isCallOnly(room);
  const small = !alone && (hidden || lock.writing.value);
  // With eyes closed too there is a dot, and the strip keeps its place: what stands below is where it was when they open.
  const dark = !alone && !small && pictures === 'dark';
  useDarkFrame(alone && pictures === 'dark');
  const Shown = place.at === 'in' ? InCall : OutOfCall;
  return (
    <>
      {place.at === 'in' && <Voices call={call} />}
      {(small || dark) && <CallDot call={call} onShow={() => setHidden(false)} />}
      {small ? null : alone ? (
        <div class={pictures === 'dark' ? 'call-only scene-nose' : 'call-only'}>
          <main>
            <PageTitle>{words.title}</PageTitle>
          </main>
          <Shown
            call={call}
            own={own}
            away={{ said: words.whole, press: () => room.remember({ callOnly: false }) }}
          />
          {place.at === 'in' && <CallFailure call={call} />}
        </div>
      ) : (
        <div class={dark ? 'call-place call-unseen' : 'call-place'}>
          <Shown call={call} own={own} away={{ said: words.hide, press: () => setHidden(true) }} />
          {place.at === 'in' && <CallFailure call={call} />}
        </div>
      )}
    </>
  );
}

interface StripProps {
  readonly call: Call;
  readonly own: SeatView;
  /** Puts it away for the evening itself. */
  readonly away: { readonly said: string; readonly press: () => void };
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

function OutOfCall({ call, own, away }: StripProps) {
  const room = useRoom();
  const { follower } = room;
  const stage = follower.stage.value;
  const place = call.place.value;
  const others = call.others.value;
  const devices = follower.devices.value;
  const cameByLink = devices?.devices.some(({ device, came }) => device === devices.own && came === 'link');
  const elsewhere = others.some(({ seat }) => seat === own.seat);
  const why = elsewhere ? words.elsewhere : whyOut(place);
  const link = why === null || elsewhere ? null : (stage?.callLink ?? null);
  return (
    <aside class="call-strip call-out" aria-label={words.title}>
      <Button busy={place.at === 'joining'} onPress={() => void call.join()}>
        <Icon of={camera} />
        {place.at === 'joining' ? words.joining : elsewhere ? words.bring : words.join}
      </Button>
      <Button kind="quiet" onPress={away.press}>
        {away.said}
      </Button>
      {cameByLink && !isCallOnly(room) && (
        <Button kind="quiet" onPress={() => room.remember({ callOnly: true })}>
          {words.only}
        </Button>
      )}
      {(why !== null || others.length > 0) && (
        <p class="small soft" role={why === null ? undefined : 'alert'}>
          {why ?? words.inCall(others.map(nameOfPeer))}
          <OtherCall link={link} />
        </p>
      )}
    </aside>
  );
}

/** Whose words end with the other call, where the plan has one. */
const OtherCall = ({ link }: { readonly link: string | null }) =>
  link !== null && (
    <>
      {' '}
      <a href={link} target="_blank" rel="noreferrer noopener">
        {words.other}
      </a>
    </>
  );

function InCall({ call, away }: StripProps) {
  const speaking = useSpeaking(call);
  const [more, setMore] = useState(false);
  const others = call.others.value;
  const large = call.large.value;
  const { camera: wished, mayPress, pictures } = call.gates.value;
  const films = wished && call.voiceOnly.value === 'no';
  const own = call.media.tracks.value.camera;
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
          <DeviceButton call={call} device="microphone" kind="quiet" />
        )}
        <DeviceButton call={call} device="camera" kind="quiet" />
        <Button kind="quiet" onPress={away.press}>
          {away.said}
        </Button>
        <Button kind="quiet" onPress={() => setMore(true)}>
          {words.more}
        </Button>
      </div>
      {more && <CallSheet call={call} onClose={() => setMore(false)} />}
    </aside>
  );
}

/** What is wrong, below the pictures and over nothing, until it is put right or away. */
function CallFailure({ call }: { readonly call: Call }) {
  const { stage } = useRoom().follower;
  const failures = call.media.failures.value;
  const poorLine = call.voiceOnly.value === 'poor-line';
  const said = failureSentence(failures) ?? (poorLine ? words.poorLine : null);
  const overHttp = failures.camera === 'needs-https' || failures.microphone === 'needs-https';
  const putAway = () => {
    call.media.forgetFailures();
    if (poorLine) call.wishVoiceOnly(true);
  };
  return (
    said !== null && (
      <div class="call-failure small">
        <p role="alert">
          {said}
          <OtherCall link={overHttp ? (stage.value?.callLink ?? null) : null} />
        </p>
        <Button kind="quiet" onPress={putAway}>
          {words.done}
        </Button>
      </div>
    )
  );
}
