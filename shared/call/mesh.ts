import { signal } from '@preact/signals-core';
import type { PeerId } from '../../core/ids.ts';
import type { CallPeer, CallServer, CallSignal } from '../wire/call.ts';
import type { CallMedia, LineMeasure, Published, Received } from './call-media.ts';
import { type Arrivals, missingSince } from './low-data.ts';
import { PeerLink } from './peer-link.ts';

/** For all pictures that a device sends together, and for one at most, in bits a second. */
const forAllPictures = 1_500_000;
const forOnePicture = 500_000;

interface MeshOptions {
  readonly own: PeerId;
  readonly servers: readonly CallServer[];
  readonly send: (to: PeerId, signal: CallSignal) => void;
}

export interface Mesh extends CallMedia {
  take(from: PeerId, signal: CallSignal): void;
  /** Finds every way anew that is not there, as after a change of network. */
  mend(): void;
}

interface Link {
  readonly line: PeerLink;
  readonly peer: CallPeer;
  receiver: RTCRtpReceiver | undefined;
}

const nothing: Published = { microphone: null, camera: null, hears: () => false, sees: () => false };

/** Every device sends to every other one: no server hears or sees anything, and up to eight hold together [V7]. */
export function createMesh({ own, servers, send }: MeshOptions): Mesh {
  const links = new Map<PeerId, Link>();
  const received = signal<ReadonlyMap<PeerId, Received>>(new Map());
  const arrived = new Map<PeerId, Arrivals>();
  let published = nothing;

  const show = (peer: PeerId, change: Partial<Received>): void => {
    const before = received.peek().get(peer) ?? { sound: null, picture: null, state: 'connecting' };
    received.value = new Map(received.peek()).set(peer, { ...before, ...change });
  };
  const publishTo = ({ line, peer }: Link): void => {
    const { microphone, camera, hears, sees } = published;
    const share = Math.min(forOnePicture, forAllPictures / Math.max(1, links.size));
    line.publish(hears(peer) ? microphone : null, sees(peer) ? camera : null, Math.round(share));
  };
  const open = (peer: CallPeer): Link => {
    const { peer: id } = peer;
    const line = new PeerLink({
      first: own < id,
      servers: servers.map((server) => ({ ...server, urls: [...server.urls] })),
      send: (said) => send(id, said),
      onTrack(track, receiver) {
        if (track.kind === 'audio') link.receiver = receiver;
        show(id, track.kind === 'audio' ? { sound: track } : { picture: track });
      },
      onState: (state) => show(id, { state }),
      onStale(said) {
        close(id);
        const again = open(peer);
        if (said.is !== 'hello') void again.line.receive(said).catch(() => undefined);
      },
    });
    const link: Link = { line, peer, receiver: undefined };
    links.set(id, link);
    show(id, {});
    publishTo(link);
    return link;
  };
  const close = (peer: PeerId): void => {
    links.get(peer)?.line.close();
    links.delete(peer);
    arrived.delete(peer);
    const left = new Map(received.peek());
    left.delete(peer);
    received.value = left;
  };

  return {
    received,
    publish(what) {
      published = what;
      for (const link of links.values()) publishTo(link);
    },
    subscribe(peers) {
      const wanted = new Map(peers.map((peer) => [peer.peer, peer]));
      for (const id of [...links.keys()]) if (!wanted.has(id)) close(id);
      for (const [id, peer] of wanted) {
        const known = links.get(id);
        if (known !== undefined) links.set(id, Object.assign(known, { peer }));
        else open(peer).line.hello();
      }
      for (const link of links.values()) publishTo(link);
    },
    take(from, said) {
      // What a link cannot take, as of an offer that came too late, is of no use; the next one heals it.
      void links
        .get(from)
        ?.line.receive(said)
        .catch(() => undefined);
    },
    loudness: (peer) => links.get(peer)?.receiver?.getSynchronizationSources()[0]?.audioLevel ?? 0,
    async measure(): Promise<LineMeasure> {
      const measures = await Promise.all(
        [...links].map(async ([peer, { line }]): Promise<LineMeasure> => {
          const all = [...(await line.pc.getStats()).values()];
          const now = arrivalsIn(all);
          const missing = now === null ? null : missingSince(arrived.get(peer), now);
          if (now !== null) arrived.set(peer, now);
          return { room: published.camera === null ? null : best(all.flatMap(roomOf), Math.max), missing };
        }),
      );
      return {
        room: best(
          measures.map(({ room }) => room),
          Math.max,
        ),
        missing: best(
          measures.map(({ missing }) => missing),
          Math.min,
        ),
      };
    },
    mend() {
      for (const { line } of links.values()) {
        if (line.pc.connectionState !== 'connected') line.restart();
      }
    },
    close() {
      for (const id of [...links.keys()]) close(id);
    },
  };
}

/** What the browser reckons that a pair in use could take (W3C, webrtc-stats, RTCIceCandidatePairStats). */
function roomOf(stats: {
  readonly type?: string;
  readonly nominated?: boolean;
  readonly availableOutgoingBitrate?: number;
}): number[] {
  const { type, nominated, availableOutgoingBitrate: room } = stats;
  return type === 'candidate-pair' && nominated === true && room !== undefined ? [room] : [];
}

function arrivalsIn(
  all: readonly {
    readonly type?: string;
    readonly kind?: string;
    readonly packetsReceived?: number;
    readonly packetsLost?: number;
  }[],
): Arrivals | null {
  const picture = all.find(({ type, kind }) => type === 'inbound-rtp' && kind === 'video');
  return picture === undefined
    ? null
    : { received: picture.packetsReceived ?? 0, lost: picture.packetsLost ?? 0 };
}

function best(
  values: readonly (number | null)[],
  of: (...known: readonly number[]) => number,
): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : of(...known);
}
