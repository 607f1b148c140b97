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
import { createServerClock, type ServerClock } from './server-clock.ts';

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
  /** Ms between probes once the clock is known; each also proves that the socket is alive. */
  readonly probeEvery?: number;
  /** Gets the socket before it connects: for whoever watches the wire, or plays dead Wi-Fi. */
  readonly onSocket?: (socket: FollowerSocket) => void;
}

const answerWithin = 5000;
const patienceOfPeople = 10_000;
/** Probes in quick succession after connecting: eight make a full set of samples. */
const burst = { count: 8, every: 150 };

export function connect(options: ConnectionOptions): Connection {
  const clock = options.clock ?? createServerClock();
  const link = signal<LinkState>({ status: 'connecting' });
  const socket: FollowerSocket = io(options.origin ?? window.location.origin, {
    auth: { ...options.credentials },
    transports: ['websocket', 'polling'],
    tryAllTransports: true,
    timeout: 5000,
    reconnectionDelay: 400,
    reconnectionDelayMax: 4000,
    forceNew: true,
  });
  options.onSocket?.(socket);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let probing = 0;
  let closed = false;

  socket.on('connect', () => {
    link.value = { status: 'live' };
    startProbing(burst.count);
  });
  socket.on('disconnect', (reason) => {
    clearTimeout(timer);
    if (final(link.peek())) return;
    link.value = { status: 'lost', since: Date.now() };
    // The server let go without a word: it may be restarting.
    if (reason === 'io server disconnect' && !closed) socket.connect();
  });
  socket.on('connect_error', (error: Error & { data?: { code?: RefusalCode } }) => {
    const code = error.data?.code;
    if (code !== undefined && code !== 'too-fast') {
      link.value = { status: 'refused', code };
      socket.disconnect();
    } else if (link.peek().status !== 'lost') {
      link.value = { status: 'lost', since: Date.now() };
    }
  });
  socket.on('dismissal', (why) => {
    if (why === 'server-stopping') return;
    link.value = { status: 'dismissed', why };
    socket.disconnect();
  });

  function startProbing(quick: number): void {
    clearTimeout(timer);
    // One chain of probes at a time: one that still waits for its answer ends with it when a new one has begun.
    probing += 1;
    const mine = probing;
    const probeOnce = async (left: number): Promise<void> => {
      const answered = await clock.probe((roundTrip) =>
        socket.timeout(answerWithin).emitWithAck('probe', { roundTrip }),
      );
      if (closed || !socket.connected || mine !== probing) return;
      // A socket that looks open but answers nothing is dead: phones leave those behind when they sleep.
      if (!answered) return void socket.io.engine.close();
      timer = setTimeout(
        () => void probeOnce(left - 1),
        left > 1 ? burst.every : (options.probeEvery ?? 15_000),
      );
    };
    void probeOnce(quick);
  }

  async function persist<Answer>(once: () => Promise<Answer>, patience: number): Promise<Answer | NoAnswer> {
    const giveUpAt = performance.now() + patience;
    while (!closed && !final(link.peek()) && performance.now() < giveUpAt) {
      const answer = socket.connected ? await once().catch(() => undefined) : undefined;
      if (answer !== undefined) return answer;
      await new Promise((resolve) => setTimeout(resolve, 250));
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
      clock.slept();
      if (socket.connected) startProbing(burst.count);
      else if (!final(link.peek()) && !closed) socket.connect();
    },
    close() {
      closed = true;
      clearTimeout(timer);
      socket.disconnect();
    },
  };
}

const final = (state: LinkState): boolean => state.status === 'refused' || state.status === 'dismissed';

export const envelope = <Ask>(id: CommandId, ask: Ask): Envelope<Ask> => ({ id, ask });
