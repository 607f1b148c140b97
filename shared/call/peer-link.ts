import type { CallSignal } from '../wire/call.ts';

type Kind = 'audio' | 'video';

export interface PeerLinkOptions {
  /** It lays the two lines, of sound and of picture, and wins when both offer at once; the other one is polite. */
  readonly first: boolean;
  readonly servers: readonly RTCIceServer[];
  readonly send: (signal: CallSignal) => void;
  /** A line of the other device is here; it carries something only while that device sends. */
  readonly onTrack: (track: MediaStreamTrack, receiver: RTCRtpReceiver) => void;
  readonly onState: (state: LinkState) => void;
  /** The other device has begun anew: this link is of no use any more. */
  readonly onStale: (signal: CallSignal) => void;
}

type LinkState = 'connecting' | 'connected' | 'lost';

/** Ms in which candidates are gathered for one message. */
const gatherFor = 40;
const mostCandidates = 15;
/** Ms without a connection before it is said again what the other one may have missed, and at most between two times. */
const sayAgainAfter = 5000;
const sayAgainWithin = 20_000;
/** Ms without a sign before a picture that stands still is taken away; a moment's gap in a radio is shorter. */
const lostAfter = 1500;

/**
 * One line to one other device, by the pattern of perfect negotiation (W3C, WebRTC 1.0, section 10.7). Sound and picture have
 * a line each from the beginning, so that opening and closing is only a matter of what is put into it, and nobody negotiates
 * at a cue.
 */
export class PeerLink {
  readonly pc: RTCPeerConnection;
  readonly #options: PeerLinkOptions;
  readonly #senders: Partial<Record<Kind, RTCRtpSender>> = {};
  #published: Readonly<Record<Kind, MediaStreamTrack | null>> = { audio: null, video: null };
  #bitrate = 0;
  #makingOffer = false;
  #ignoresOffer = false;
  #answerPending = false;
  #candidates: RTCIceCandidate[] = [];
  #received: Promise<void> = Promise.resolve();
  #timers = new Set<ReturnType<typeof setTimeout>>();

  constructor(options: PeerLinkOptions) {
    this.#options = options;
    const pc = new RTCPeerConnection({ iceServers: [...options.servers] });
    this.pc = pc;
    pc.onnegotiationneeded = () => {
      // The polite one answers only, but for a restart: its lines are those of the offer.
      if (options.first || pc.remoteDescription !== null) void this.#offer();
    };
    pc.onicecandidate = ({ candidate }) => {
      if (candidate !== null) this.#gather(candidate);
    };
    pc.onconnectionstatechange = () => this.#follow();
    pc.ontrack = ({ track, receiver, transceiver }) => {
      transceiver.direction = 'sendrecv';
      this.#senders[track.kind as Kind] = transceiver.sender;
      options.onTrack(track, receiver);
      void this.#put(track.kind as Kind);
    };
    this.#sayAgain(sayAgainAfter);
    if (!options.first) return;
    for (const kind of ['audio', 'video'] as const) {
      this.#senders[kind] = pc.addTransceiver(kind, { direction: 'sendrecv' }).sender;
    }
  }

  /** One after the other: while an offer is being answered the next one would be answered by an offer. */
  receive(signal: CallSignal): Promise<void> {
    const done = this.#received.then(() => this.#take(signal));
    this.#received = done.catch(() => undefined);
    return done;
  }

  async #take(signal: CallSignal): Promise<void> {
    const { pc } = this;
    if (signal.is === 'hello') {
      if (pc.remoteDescription !== null) this.#options.onStale(signal);
      else this.hello();
      return;
    }
    if (signal.is === 'candidates') {
      for (const candidate of signal.candidates) {
        try {
          await pc.addIceCandidate(candidate as RTCIceCandidateInit);
        } catch (error) {
          if (!this.#ignoresOffer && pc.remoteDescription !== null) throw error;
        }
      }
      return;
    }
    const known = pc.remoteDescription;
    if (known !== null && fingerprintOf(known.sdp) !== fingerprintOf(signal.sdp)) {
      return this.#options.onStale(signal);
    }
    const ready = !this.#makingOffer && (pc.signalingState === 'stable' || this.#answerPending);
    const collides = signal.is === 'offer' && !ready;
    this.#ignoresOffer = this.#options.first && collides;
    if (this.#ignoresOffer) return;
    this.#answerPending = signal.is === 'answer';
    await pc.setRemoteDescription({ type: signal.is, sdp: signal.sdp });
    this.#answerPending = false;
    if (signal.is !== 'offer') return;
    await pc.setLocalDescription();
    this.#describe();
  }

  /** What goes into its two lines from now on; null is nothing at all. Bits a second for the picture, at most. */
  publish(audio: MediaStreamTrack | null, video: MediaStreamTrack | null, bitrate: number): void {
    this.#published = { audio, video };
    this.#bitrate = bitrate;
    void this.#put('audio');
    void this.#put('video');
  }

  /** Says again what the other one may have missed, or asks it to. */
  hello(): void {
    if (this.#options.first && this.pc.localDescription !== null) this.#describe();
    else if (!this.#options.first) this.#options.send({ is: 'hello' });
  }

  /** Finds a way anew, as after a change of network. */
  restart(): void {
    this.pc.restartIce();
  }

  close(): void {
    for (const timer of this.#timers) clearTimeout(timer);
    this.pc.onconnectionstatechange = null;
    this.pc.onicecandidate = null;
    this.pc.close();
  }

  async #offer(): Promise<void> {
    try {
      this.#makingOffer = true;
      await this.pc.setLocalDescription();
      this.#describe();
    } catch {
      // The link was closed meanwhile, or the other one's offer came first: that one counts.
    } finally {
      this.#makingOffer = false;
    }
  }

  #describe(): void {
    const description = this.pc.localDescription;
    if (description?.type === 'offer' || description?.type === 'answer') {
      this.#options.send({ is: description.type, sdp: description.sdp });
    }
  }

  async #put(kind: Kind): Promise<void> {
    const sender = this.#senders[kind];
    const track = this.#published[kind];
    if (sender === undefined || this.pc.signalingState === 'closed') return;
    if (sender.track !== track) await sender.replaceTrack(track).catch(() => undefined);
    if (kind !== 'video' || track === null) return;
    const parameters = sender.getParameters();
    const [encoding] = parameters.encodings;
    if (encoding === undefined || encoding.maxBitrate === this.#bitrate) return;
    encoding.maxBitrate = this.#bitrate;
    await sender.setParameters(parameters).catch(() => undefined);
  }

  #gather(candidate: RTCIceCandidate): void {
    this.#candidates.push(candidate);
    if (this.#candidates.length === 1) this.#after(gatherFor, () => this.#sendCandidates());
    else if (this.#candidates.length >= mostCandidates) this.#sendCandidates();
  }

  #sendCandidates(): void {
    const candidates = this.#candidates.splice(0).map((each) => each.toJSON());
    if (candidates.length === 0) return;
    this.#options.send({
      is: 'candidates',
      candidates: candidates.map(({ candidate = '', sdpMid, sdpMLineIndex, usernameFragment }) => ({
        candidate,
        sdpMid: sdpMid ?? null,
        sdpMLineIndex: sdpMLineIndex ?? null,
        usernameFragment,
      })),
    });
  }

  /** A signal may be lost: refused as one too many, or sent while a line was broken. Nobody else would ever send it again. */
  #sayAgain(wait: number): void {
    this.#after(wait, () => {
      const { connectionState, signalingState, remoteDescription } = this.pc;
      if (connectionState === 'connected') return this.#sayAgain(sayAgainAfter);
      if (signalingState === 'have-local-offer' || remoteDescription === null) this.hello();
      else if (this.#options.first) this.restart();
      this.#sayAgain(Math.min(2 * wait, sayAgainWithin));
    });
  }

  #follow(): void {
    const { connectionState } = this.pc;
    if (connectionState === 'connected') this.#options.onState('connected');
    if (connectionState === 'failed') {
      this.#options.onState('lost');
      this.restart();
    }
    if (connectionState === 'disconnected') {
      this.#after(lostAfter, () => {
        if (this.pc.connectionState === 'disconnected') this.#options.onState('lost');
      });
    }
  }

  #after(ms: number, run: () => void): void {
    const timer = setTimeout(() => {
      this.#timers.delete(timer);
      run();
    }, ms);
    this.#timers.add(timer);
  }
}

/** A connection has one for life (RFC 8122): another one is another connection, as of a page that was loaded again. */
const fingerprintOf = (sdp: string): string | undefined => /^a=fingerprint:(.*)$/m.exec(sdp)?.[1]?.trim();
