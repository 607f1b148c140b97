import type { ReadonlySignal } from '@preact/signals-core';
import type { CallGates, CallRole, CallScene, CallWishes } from '../../core/call/call-gates.ts';
import type { PeerId, SeatId } from '../../core/ids.ts';
import type { FollowerSocket } from '../follower/line.ts';
import type { FailureCode } from '../wire/answer.ts';
import type { CallPeer } from '../wire/call.ts';
import type { Received } from './call-media.ts';
import type { Device, OwnMedia } from './own-media.ts';

/** What of the evening the call goes by; all of it as the follower shows it, at the cue's moment [F4]. */
export interface CallEvening {
  readonly socket: FollowerSocket;
  readonly role: CallRole;
  /** Its own seat, for whoever has one. */
  readonly seat: SeatId | null;
  readonly scene: ReadonlySignal<CallScene>;
  /** Whose turn it is to speak; null outside a talk. */
  readonly turn: ReadonlySignal<SeatId | null>;
  /** Who has called for the host: on a guest's device only itself. */
  readonly raised: ReadonlySignal<ReadonlySet<SeatId>>;
}

/** Why a device is not in the call; `no-webrtc`: its browser has no way to be. */
export type WhyOut = FailureCode | 'elsewhere' | 'sent-away' | 'no-webrtc';

export type CallPlace =
  | { readonly at: 'out'; readonly why: WhyOut | null }
  | { readonly at: 'joining' }
  | { readonly at: 'in'; readonly own: PeerId };

/** The evening's call as this device is in it. */
export interface Call {
  readonly place: ReadonlySignal<CallPlace>;
  readonly role: CallRole;
  /** Who is in it, without this device. */
  readonly others: ReadonlySignal<readonly CallPeer[]>;
  /** Whose picture is the large one [V3]. */
  readonly large: ReadonlySignal<CallPeer | undefined>;
  readonly received: ReadonlySignal<ReadonlyMap<PeerId, Received>>;
  readonly gates: ReadonlySignal<CallGates>;
  readonly wishes: ReadonlySignal<CallWishes>;
  readonly media: Pick<OwnMedia, 'tracks' | 'failures' | 'forgetFailures'>;
  readonly voiceOnly: ReadonlySignal<'no' | 'wished' | 'poor-line'>;
  /** Whether another's microphone is open as far as the cue allows it [V1], whatever that device says. */
  isOpen(peer: CallPeer): boolean;
  /** Whether the cue lets that voice be heard here [V1]. */
  mayBeHeard(peer: CallPeer): boolean;
  /** Whether this device plays it. */
  plays(peer: CallPeer): boolean;
  /** From 0 to 1. */
  loudness(peer: PeerId): number;
  join(): Promise<void>;
  leave(): void;
  turnOn(device: Device, on: boolean): Promise<void>;
  wishTurn(on: boolean): Promise<void>;
  press(down: boolean): void;
  wishVoiceOnly(on: boolean): void;
  close(): void;
}
