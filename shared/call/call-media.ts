import type { ReadonlySignal } from '@preact/signals-core';
import type { PeerId } from '../../core/ids.ts';
import type { CallPeer } from '../wire/call.ts';

/** What this device sends, and to whom; a track that goes to nobody is not sent at all. */
export interface Published {
  readonly microphone: MediaStreamTrack | null;
  readonly camera: MediaStreamTrack | null;
  readonly hears: (peer: CallPeer) => boolean;
  readonly sees: (peer: CallPeer) => boolean;
}

/** What comes from one other device. */
export interface Received {
  readonly sound: MediaStreamTrack | null;
  readonly picture: MediaStreamTrack | null;
  /** `lost`: nothing comes any more; it is tried again by itself. */
  readonly state: 'connecting' | 'connected' | 'lost';
}

/** How the lines are, measured now. */
export interface LineMeasure {
  /** Bits a second that the best line could take: what one's own way out gives. Null where the browser does not say. */
  readonly room: number | null;
  /** From 0 to 1, of the picture that comes best: what of it has not come since the measure before. Null where none comes. */
  readonly missing: number | null;
}

/**
 * The seam where a media server would stand: the call publishes, subscribes and closes, and does not know how sound and
 * picture travel. `mesh.ts` stands behind it, in which each device sends to each other one.
 */
export interface CallMedia {
  publish(what: Published): void;
  /** To these devices and no others: who is not named any more is gone at once. */
  subscribe(peers: readonly CallPeer[]): void;
  readonly received: ReadonlySignal<ReadonlyMap<PeerId, Received>>;
  /** How loud a device is now, from 0 to 1. */
  loudness(peer: PeerId): number;
  measure(): Promise<LineMeasure>;
  close(): void;
}
