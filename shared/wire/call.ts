import { z } from 'zod';
import type { CallRole } from '../../core/call/call-gates.ts';
import { type PeerId, peerId, type SeatId } from '../../core/ids.ts';

/** How many devices hold together without a server for media: each sends to every other one [V7]. */
export const mostPeers = 8;
/** Characters of a session description (RFC 8866). One of a browser, with sound and picture, has some 7,000. */
export const longestDescription = 14_000;
const mostCandidates = 20;
const longestCandidate = 400;

/** What a device shows the others that it has open. Whether it may is another matter: each device knows the cue. */
export interface CallShown {
  readonly microphone: boolean;
  readonly camera: boolean;
  /** It wants sound only, so that nobody sends it pictures. */
  readonly voiceOnly: boolean;
}

export interface CallPeer extends CallShown {
  readonly peer: PeerId;
  readonly role: CallRole;
  /** Null for whoever has no seat. */
  readonly seat: SeatId | null;
  /** As the guest has given it; null for whoever has no seat. */
  readonly name: string | null;
}

/** Who is in the call, in the order in which they came; to devices that may be in it and have asked [V8]. */
export interface CallView {
  readonly peers: readonly CallPeer[];
}

/** What a browser knows as RTCIceServer (W3C, WebRTC 1.0, section 4.2.4): addresses are found, or sound is passed on, there. */
export interface CallServer {
  readonly urls: readonly string[];
  readonly username?: string;
  readonly credential?: string;
}

interface CallCandidate {
  readonly candidate: string;
  readonly sdpMid: string | null;
  readonly sdpMLineIndex: number | null;
  readonly usernameFragment?: string | null | undefined;
}

/** What two devices tell each other to connect (W3C, WebRTC 1.0, section 10.7). */
export type CallSignal =
  | { readonly is: 'offer' | 'answer'; readonly sdp: string }
  /** This end has begun anew, or has missed an offer. */
  | { readonly is: 'hello' }
  | { readonly is: 'candidates'; readonly candidates: readonly CallCandidate[] };

export interface CallSignalFrom {
  readonly from: PeerId;
  readonly signal: CallSignal;
}

export type CallCommand =
  /** Wants to hear who is in the call. */
  | { readonly type: 'Watch' }
  /** The same `peer` again comes back to the same place, after a line that broke. `as` `room`: the camera at the table. */
  | {
      readonly type: 'Join';
      readonly peer: PeerId;
      readonly as: 'self' | 'room';
      readonly shown: CallShown;
    }
  | { readonly type: 'Show'; readonly shown: CallShown }
  | { readonly type: 'Signal'; readonly to: PeerId; readonly signal: CallSignal }
  | { readonly type: 'Leave' };

/** `servers`: only in answer to `Join`. */
export interface CallDone {
  readonly ok: true;
  readonly servers?: readonly CallServer[];
}

const peer = z
  .string()
  .regex(/^[A-Za-z0-9_-]{8,40}$/)
  .transform(peerId);
const shown = z.strictObject({ microphone: z.boolean(), camera: z.boolean(), voiceOnly: z.boolean() });
const candidate = z.strictObject({
  candidate: z.string().max(longestCandidate),
  sdpMid: z.string().max(40).nullable(),
  sdpMLineIndex: z.number().int().min(0).max(100).nullable(),
  usernameFragment: z.string().max(256).nullish(),
});
const sdp = z.string().max(longestDescription);
const signal = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('offer'), sdp }),
  z.strictObject({ is: z.literal('answer'), sdp }),
  z.strictObject({ is: z.literal('hello') }),
  z.strictObject({ is: z.literal('candidates'), candidates: z.array(candidate).max(mostCandidates) }),
]);

export const callCommandSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('Watch') }),
  z.strictObject({ type: z.literal('Join'), peer, as: z.enum(['self', 'room']), shown }),
  z.strictObject({ type: z.literal('Show'), shown }),
  z.strictObject({ type: z.literal('Signal'), to: peer, signal }),
  z.strictObject({ type: z.literal('Leave') }),
]) satisfies z.ZodType<CallCommand>;
