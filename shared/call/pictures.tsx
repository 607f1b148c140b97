import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { PeerId } from '../../core/ids.ts';
import { callWords as words } from '../language/en/call.ts';
import type { CallPeer } from '../wire/call.ts';
import type { Call } from './call.ts';
import { nameOfPeer } from './call-words.ts';

/** Ms between two looks at who is speaking. */
const listenEvery = 250;
/** Of full loudness; a quiet room is below it. */
const asLoudAs = 0.02;

/** Who is speaking now; only of those who may be heard. */
export function useSpeaking(call: Call): ReadonlySet<PeerId> {
  const [speaking, setSpeaking] = useState<readonly PeerId[]>([]);
  useEffect(() => {
    const listen = setInterval(() => {
      const now = call.others
        .peek()
        .filter((peer) => call.mayBeHeard(peer) && call.loudness(peer.peer) > asLoudAs)
        .map(({ peer }) => peer);
      setSpeaking((before) => (before.join() === now.join() ? before : now));
    }, listenEvery);
    return () => clearInterval(listen);
  }, [call]);
  return new Set(speaking);
}

interface MediaProps {
  readonly track: MediaStreamTrack;
}

function useTrack<Element extends HTMLMediaElement>(track: MediaStreamTrack) {
  const element = useRef<Element>(null);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return;
    current.srcObject = new MediaStream([track]);
    // Where a browser wants a tap first, the page offers one.
    current.play().catch(() => undefined);
    return () => {
      current.srcObject = null;
    };
  }, [track]);
  return element;
}

/** A picture of the call; what it says is in the words beside it. */
export function Picture({ track, mirrored }: MediaProps & { readonly mirrored?: boolean }) {
  const video = useTrack<HTMLVideoElement>(track);
  return (
    <video
      class={mirrored ? 'call-video call-mirrored' : 'call-video'}
      ref={video}
      muted
      autoplay
      playsInline
    />
  );
}

function Voice({ track, muted }: MediaProps & { readonly muted: boolean }) {
  const audio = useTrack<HTMLAudioElement>(track);
  return <audio class="call-voice" ref={audio} autoplay muted={muted} />;
}

/** Everybody's voice; those whom this cue keeps silent are not played [V1]. */
export function Voices({ call }: { readonly call: Call }) {
  const received = call.received.value;
  return (
    <>
      {call.others.value.map((peer) => {
        const track = received.get(peer.peer)?.sound;
        return track && <Voice key={peer.peer} track={track} muted={!call.plays(peer)} />;
      })}
    </>
  );
}

interface TileProps {
  readonly call: Call;
  readonly peer: CallPeer;
  readonly speaks: boolean;
  readonly large?: boolean;
}

/** One device in the call: its picture where there is one, its name, and whether one hears it. */
export function PeerTile({ call, peer, speaks, large }: TileProps) {
  const { picture = null, state = 'connecting' } = call.received.value.get(peer.peer) ?? {};
  const looks = call.gates.value.pictures === 'shown' && call.voiceOnly.value === 'no';
  const shown = peer.camera && state !== 'lost' && looks ? picture : null;
  const open = call.isOpen(peer);
  const said =
    state === 'lost'
      ? words.lost
      : speaks
        ? words.speaks
        : open || peer.role === 'screen'
          ? null
          : words.silent;
  return (
    <figure
      class={large ? 'call-tile call-tile-large' : 'call-tile'}
      data-speaks={speaks ? 'true' : undefined}
    >
      {shown === null ? (
        <span class="call-initial">{nameOfPeer(peer).slice(0, 1)}</span>
      ) : (
        <Picture track={shown} />
      )}
      <figcaption>
        <bdi>{nameOfPeer(peer)}</bdi>
        {said !== null && <span class="call-said">{said}</span>}
      </figcaption>
    </figure>
  );
}
