import { type ReadonlySignal, signal } from '@preact/signals-core';
import { io, type Socket } from 'socket.io-client';
import type { CommandId, TastingId } from '../../core/ids.ts';
import type { HelperCommand } from '../../core/session/command.ts';
import type { NoAnswer } from '../wire/answer.ts';
import type { SentGuestCommand, SentHostCommand } from '../wire/commands.ts';
import type { DeviceAsk } from '../wire/devices.ts';
import type { ConsentGiving, NoteSave } from '../wire/notebook.ts';
import type { PouringCommand } from '../wire/pouring.ts';
import type { DeviceAck } from '../wire/protocol.ts';
import {
  type ClientToServer,
  type CommandAnswer,
  type Credentials,
  type Dismissal,
  type Envelope,
  type NoteAnswer,
  protocolVersion,
  type RefusalCode,
  type ServerToClient,
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

export interface Connection {
  readonly socket: FollowerSocket;
  readonly link: ReadonlySignal<LinkState>;
  readonly clock: ServerClock;
  /** Asked again with the same id until it is answered or nobody would wait any longer. */
  sendHostCommand(envelope: Envelope<SentHostCommand>): Promise<CommandAnswer | NoAnswer>;
  sendGuestCommand(envelope: Envelope<SentGuestCommand>): Promise<CommandAnswer | NoAnswer>;
  sendHelperCommand(envelope: Envelope<HelperCommand>): Promise<CommandAnswer | NoAnswer>;
  sendPouringCommand(envelope: Envelope<PouringCommand>): Promise<CommandAnswer | NoAnswer>;
  saveNote(save: NoteSave): Promise<NoteAnswer | NoAnswer>;
  giveConsents(giving: ConsentGiving): Promise<CommandAnswer | NoAnswer>;
  askAboutDevices(ask: DeviceAsk): Promise<DeviceAck | NoAnswer>;
  /** To be called when the device may have slept: finds out whether the socket is alive and probes again. */
  wake(): void;
  close(): void;
}

/** What every device follows with. */
export interface FollowerOptions {
  /** Absent: the page's own origin. */
  readonly origin?: string | undefined;
  readonly tasting: TastingId;
  readonly key: string;
  readonly local?: LocalClock | undefined;
  readonly after?: After | undefined;
  /** Absent: over the network. */
  readonly open?: ((credentials: Credentials) => FollowerSocket) | undefined;
  /** Gets the socket before it connects: for whoever watches the wire, or plays dead Wi-Fi. */
  readonly onSocket?: ((socket: FollowerSocket) => void) | undefined;
}

const answerWithin = 5000;
/** A device that may have slept is not kept waiting for a socket that is probably dead. */
const wakeAnswerWithin = 800;
/** Ms between attempts; each is varied by half of it, so that a roomful does not come at once. */
const attempts = { first: 300, longest: 700 };
const failuresBeforePolling = 2;
const patienceOfPeople = 10_000;
/** Before asking again, in ms. */
const beforeAnother = 250;

/** @param known the newest version that this device has seen, said each time it comes to the door [F7] */
export function connect(
  role: Credentials['role'],
  options: FollowerOptions,
  known: () => number | undefined = () => undefined,
): Connection {
  const { local = deviceClock, after = afterMs, tasting, key } = options;
  const clock = createServerClock(local);
  const link = signal<LinkState>({ status: 'connecting' });
  const credentials: Credentials = { protocol: protocolVersion, role, tasting, key };
  const socket = options.open?.(credentials) ?? overTheNetwork(credentials, known, options.origin);
  options.onSocket?.(socket);
  let closed = false;
  const probing = createProbing({
    probe: (within = answerWithin) =>
      clock.probe((measured) => socket.timeout(within).emitWithAck('probe', measured)),
    // A socket that looks open but answers nothing is dead: phones leave those behind when they sleep.
    onSilence: () => socket.io.engine.close(),
    after,
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

  async function persist<Answer>(once: () => Promise<Answer>): Promise<Answer | NoAnswer> {
    const giveUpAt = local.steady() + patienceOfPeople;
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
    sendHostCommand: (envelope) => persist(() => waiting().emitWithAck('host:ask', envelope)),
    sendGuestCommand: (envelope) => persist(() => waiting().emitWithAck('guest:ask', envelope)),
    sendHelperCommand: (envelope) => persist(() => waiting().emitWithAck('helper:ask', envelope)),
    sendPouringCommand: (envelope) => persist(() => waiting().emitWithAck('pouring:ask', envelope)),
    saveNote: (save) => persist(() => waiting().emitWithAck('note:save', save)),
    giveConsents: (giving) => persist(() => waiting().emitWithAck('note:consent', giving)),
    askAboutDevices: (ask) => persist(() => waiting().emitWithAck('device:ask', ask)),
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

function overTheNetwork(
  credentials: Credentials,
  known: () => number | undefined,
  origin = window.location.origin,
): FollowerSocket {
  const socket: FollowerSocket = io(origin, {
    auth: (show) => show({ ...credentials, known: known() }),
    transports: ['websocket'],
    tryAllTransports: true,
    timeout: 5000,
    reconnectionDelay: attempts.first,
    reconnectionDelayMax: attempts.longest,
    forceNew: true,
  });
  pollAfterFailures(socket.io);
  return socket;
}

/** Where a WebSocket fails again and again something on the way may not let it through: polling is tried as well. */
function pollAfterFailures(manager: FollowerSocket['io']): void {
  let failures = 0;
  manager.on('open', () => {
    failures = 0;
  });
  manager.on('error', () => {
    failures += 1;
    if (failures !== failuresBeforePolling) return;
    import('./polling.ts').then(
      ({ waysWithPolling }) => {
        manager.opts.transports = waysWithPolling;
      },
      () => {
        failures = 0;
      },
    );
  });
}

const final = (state: LinkState): boolean => state.status === 'refused' || state.status === 'dismissed';

export const envelope = <Ask>(id: CommandId, ask: Ask): Envelope<Ask> => ({ id, ask });
