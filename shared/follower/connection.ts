import { type ReadonlySignal, signal } from '@preact/signals-core';
import { io, type Socket } from 'socket.io-client';
import type { CommandId } from '../../core/ids.ts';
import type { GuestAsk, HostAsk } from '../wire/commands.ts';
import type { NoteSave, NoteShare } from '../wire/notebook.ts';
import type { PouringAsk } from '../wire/pouring.ts';
import type {
  Ack,
  ClientToServer,
  Credentials,
  Dismissal,
  Envelope,
  NoteAck,
  RefusalCode,
  ServerToClient,
} from '../wire/protocol.ts';
import { createProbing } from './clock-probing.ts';
import { createServerClock, deviceClock, type LocalClock, type ServerClock } from './server-clock.ts';
import { type After, after as afterMs } from './timer.ts';

export type FollowerSocket = Socket<ServerToClient, ClientToServer>;

/** `lost` tries again by itself; `refused` and `dismissed` need a person. */
export type LinkState =
  | { readonly status: 'connecting' }
  | { readonly status: 'live' }
  | { readonly status: 'lost'; readonly since: number }
  | { readonly status: 'refused'; readonly code: RefusalCode }
  | { readonly status: 'dismissed'; readonly why: Dismissal };

/** No answer within the time a person would wait. Whether it was done is not known; asking again with the id is safe. */
export interface NoAnswer {
  readonly ok: false;
  readonly code: 'no-answer';
}

export interface Connection {
  readonly socket: FollowerSocket;
  readonly link: ReadonlySignal<LinkState>;
  readonly clock: ServerClock;
  /** Asked again with the same id until it is answered or `patience` ms are over. */
  askHost(envelope: Envelope<HostAsk>, patience?: number): Promise<Ack | NoAnswer>;
  askGuest(envelope: Envelope<GuestAsk>, patience?: number): Promise<Ack | NoAnswer>;
  askAboutPouring(envelope: Envelope<PouringAsk>): Promise<Ack | NoAnswer>;
  saveNote(save: NoteSave): Promise<NoteAck | NoAnswer>;
  shareNotes(share: NoteShare): Promise<Ack | NoAnswer>;
  /** To be called when the device may have slept: finds out whether the socket is alive and probes again. */
  wake(): void;
  close(): void;
}

export interface ConnectionOptions {
  /** Absent: the page's own origin. */
  readonly origin?: string;
  readonly credentials: Credentials;
  readonly clock?: ServerClock;
  readonly local?: LocalClock;
  readonly after?: After;
  /** Absent: over the network. */
  readonly open?: (credentials: Credentials) => FollowerSocket;
  /** Ms between probes once the clock is known; each also proves that the socket is alive. */
  readonly probeEvery?: number;
  /** Gets the socket before it connects: for whoever watches the wire, or plays dead Wi-Fi. */
  readonly onSocket?: (socket: FollowerSocket) => void;
}

const answerWithin = 5000;
/** A device that may have slept is not kept waiting for a socket that is probably dead. */
const wakeAnswerWithin = 800;
/** Ms between attempts; each is varied by half of it, so that a roomful does not come at once. */
const attempts = { first: 300, longest: 700 };
const patienceOfPeople = 10_000;
/** Before asking again, in ms. */
const beforeAnother = 250;

export function connect(options: ConnectionOptions): Connection {
  const { local = deviceClock, after = afterMs } = options;
  const clock = options.clock ?? createServerClock(local);
  const link = signal<LinkState>({ status: 'connecting' });
  const socket = options.open?.(options.credentials) ?? overTheNetwork(options);
  options.onSocket?.(socket);
  let closed = false;
  const probing = createProbing({
    probe: (within = answerWithin) =>
      clock.probe((measured) => socket.timeout(within).emitWithAck('probe', measured)),
    // A socket that looks open but answers nothing is dead: phones leave those behind when they sleep.
    onSilence: () => socket.io.engine.close(),
    after,
    rarely: options.probeEvery,
  });

  socket.on('connect', () => {
    link.value = { status: 'live' };
    probing.start();
  });
  socket.on('disconnect', (reason) => {
    probing.stop();
    if (final(link.peek())) return;
    link.value = { status: 'lost', since: local.wall() };
    // The server let go without a word: it may be restarting.
    if (reason === 'io server disconnect' && !closed) socket.connect();
  });
  socket.on('connect_error', (error: Error & { data?: { code?: RefusalCode } }) => {
    const code = error.data?.code;
    if (code !== undefined && code !== 'too-fast') {
      link.value = { status: 'refused', code };
      socket.disconnect();
    } else if (link.peek().status !== 'lost') {
      link.value = { status: 'lost', since: local.wall() };
    }
  });
  socket.on('dismissal', (why) => {
    if (why === 'server-stopping') return;
    link.value = { status: 'dismissed', why };
    socket.disconnect();
  });

  async function persist<Answer>(once: () => Promise<Answer>, patience: number): Promise<Answer | NoAnswer> {
    const giveUpAt = local.steady() + patience;
    while (!closed && !final(link.peek()) && local.steady() < giveUpAt) {
      const answer = socket.connected ? await once().catch(() => undefined) : undefined;
      if (answer !== undefined) return answer;
      await new Promise<void>((resolve) => after(beforeAnother, resolve));
    }
    return { ok: false, code: 'no-answer' };
  }

  const waiting = () => socket.timeout(answerWithin);
  return {
    socket,
    link,
    clock,
    askHost: (envelope, patience = patienceOfPeople) =>
      persist(() => waiting().emitWithAck('host:ask', envelope), patience),
    askGuest: (envelope, patience = patienceOfPeople) =>
      persist(() => waiting().emitWithAck('guest:ask', envelope), patience),
    askAboutPouring: (envelope) =>
      persist(() => waiting().emitWithAck('pouring:ask', envelope), patienceOfPeople),
    saveNote: (save) => persist(() => waiting().emitWithAck('note:save', save), patienceOfPeople),
    shareNotes: (share) => persist(() => waiting().emitWithAck('note:share', share), patienceOfPeople),
    wake() {
      const usual = clock.roundTrip.peek() ?? 0;
      clock.slept();
      const soon = Math.min(answerWithin, Math.max(wakeAnswerWithin, 3 * usual));
      if (socket.connected) probing.start(soon);
      else if (!final(link.peek()) && !closed) socket.connect();
    },
    close() {
      closed = true;
      probing.stop();
      socket.disconnect();
    },
  };
}

function overTheNetwork({ origin, credentials }: ConnectionOptions): FollowerSocket {
  return io(origin ?? window.location.origin, {
    auth: { ...credentials },
    transports: ['websocket', 'polling'],
    tryAllTransports: true,
    timeout: 5000,
    reconnectionDelay: attempts.first,
    reconnectionDelayMax: attempts.longest,
    forceNew: true,
  });
}

const final = (state: LinkState): boolean => state.status === 'refused' || state.status === 'dismissed';

export const envelope = <Ask>(id: CommandId, ask: Ask): Envelope<Ask> => ({ id, ask });
