import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { CommandId, TastingId } from '../../core/ids.ts';
import type { ClockView } from '../../core/session/views/stage.ts';
import type { NoAnswer } from '../wire/answer.ts';
import {
  type ClientToServer,
  type Credentials,
  type Dismissal,
  type Envelope,
  protocolVersion,
  type RefusalCode,
} from '../wire/protocol.ts';
import { createProbing } from './clock-probing.ts';
import { createHealing, type Healing } from './healing.ts';
import { dial, type FollowerSocket, type Line, lookAt } from './line.ts';
import { createServerClock, deviceClock, type LocalClock, type ServerClock } from './server-clock.ts';
import { type After, after as afterMs } from './timer.ts';
import { createToldMeasures } from './told-measures.ts';

/** `lost` tries again by itself; `refused` and `dismissed` need a person. */
export type LinkState =
  | { readonly status: 'connecting' }
  | { readonly status: 'live' }
  | { readonly status: 'lost'; readonly since: number }
  | { readonly status: 'refused'; readonly code: RefusalCode }
  | { readonly status: 'dismissed'; readonly why: Dismissal };

/** What a device may ask for, to be done once whatever becomes of the line. */
type Asked = Exclude<keyof ClientToServer, 'probe' | 'note:share' | 'call:ask'>;
type Payload<Event extends Asked> = Parameters<ClientToServer[Event]>[0];
type AnswerTo<Event extends Asked> = Parameters<Parameters<ClientToServer[Event]>[1]>[0];

export interface Connection {
  readonly socket: FollowerSocket;
  readonly link: ReadonlySignal<LinkState>;
  readonly clock: ServerClock;
  /** Asked again with the same id until it is answered or nobody would wait any longer. */
  ask<Event extends Asked>(event: Event, payload: Payload<Event>): Promise<AnswerTo<Event> | NoAnswer>;
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
/** A probe waits so many round trips for its answer, and this long at least, in ms: less for who has just woken. */
const probePatience = { roundTrips: 4, least: 1000, leastAfterWaking: 800 };
const patienceOfPeople = 10_000;
/** Before asking again, in ms. */
const beforeAnother = 250;

/** What of a view the line is kept by. */
interface Shown {
  /** Said each time the device comes to the door [F7]. */
  readonly version: number;
  readonly clock?: ClockView;
}

/** @param shown the newest view that this device has seen */
export function connect(
  role: Credentials['role'],
  options: FollowerOptions,
  shown: () => Shown | null = () => null,
): Connection {
  const { local = deviceClock, after = afterMs, tasting, key } = options;
  const clock = createServerClock(local);
  const link = signal<LinkState>({ status: 'connecting' });
  const credentials: Credentials = { protocol: protocolVersion, role, tasting, key };
  const heard = () => probing.heard();
  const line: Line = options.open
    ? // Whoever brings the line mends it too.
      { socket: options.open(credentials), mend: undefined }
    : dial({ credentials, known: () => shown()?.version, origin: options.origin, heard });
  const { socket } = line;
  options.onSocket?.(socket);
  let closed = false;
  let silent = false;
  const healing: Healing | undefined =
    line.mend &&
    createHealing({
      ...line.mend,
      look: lookAt(options.origin),
      now: local.steady,
      after,
      chance: Math.random,
    });
  healing?.begun();
  const patienceOfProbe = (least = probePatience.least): number => {
    const usual = clock.roundTrip.peek();
    return usual === null
      ? answerWithin
      : Math.min(answerWithin, Math.max(least, probePatience.roundTrips * usual));
  };
  const measures = createToldMeasures();
  const probing = createProbing({
    probe: (within = patienceOfProbe()) =>
      clock.probe((measured) => socket.timeout(within).emitWithAck('probe', measures.news(measured))),
    cueRuns() {
      const running = shown()?.clock;
      return running?.kind === 'running' && clock.now() < running.endsAt;
    },
    // A socket that looks open but answers nothing is dead: phones leave those behind when they sleep.
    onSilence: () => {
      silent = true;
      socket.io.engine.close();
    },
    now: local.steady,
    after,
  });

  socket.on('connect', () => {
    healing?.stop();
    link.value = { status: 'live' };
    measures.forget();
    probing.start();
  });
  socket.on('disconnect', (reason) => {
    probing.stop();
    const wasSilent = silent || reason === 'ping timeout';
    silent = false;
    if (final(link.peek()) || closed) return;
    if (link.peek().status === 'live') healing?.lost(wasSilent ? 'silence' : 'hung-up');
    else healing?.failed();
    link.value = { status: 'lost', since: local.wall() };
    // The server let go without a word: it may be restarting.
    if (reason === 'io server disconnect' && healing === undefined) socket.connect();
  });
  socket.on('connect_error', (error: Error & { data?: { code?: RefusalCode } }) => {
    const code = error.data?.code;
    if (code !== undefined && code !== 'too-fast') {
      link.value = { status: 'refused', code };
      healing?.stop();
      socket.disconnect();
      return;
    }
    healing?.failed();
    if (link.peek().status !== 'lost') link.value = { status: 'lost', since: local.wall() };
  });
  // The next loss is mended at once: nobody starts, and nothing is stormed.
  socket.on('moved', () => {
    silent = true;
  });
  socket.on('dismissal', (why) => {
    if (why === 'server-stopping') return;
    link.value = { status: 'dismissed', why };
    healing?.stop();
    socket.disconnect();
  });

  async function persist<Answer>(once: () => Promise<Answer>): Promise<Answer | NoAnswer> {
    const giveUpAt = local.steady() + patienceOfPeople;
    while (!closed && !final(link.peek()) && local.steady() < giveUpAt) {
      const answer = socket.connected ? await once().catch(() => undefined) : undefined;
      if (answer !== undefined) return answer;
      // Not at the very moment of connecting: what the server tells then comes first.
      await new Promise<void>((resolve) => after(beforeAnother, resolve));
    }
    return { ok: false, code: 'no-answer' };
  }

  /** Socket.IO's own types of it cannot be given an event that is not known yet. */
  interface Waiting {
    emitWithAck<Event extends Asked>(event: Event, payload: Payload<Event>): Promise<AnswerTo<Event>>;
  }
  return {
    socket,
    link,
    clock,
    ask: (event, payload) =>
      persist(() => (socket.timeout(answerWithin) as unknown as Waiting).emitWithAck(event, payload)),
    wake() {
      const soon = patienceOfProbe(probePatience.leastAfterWaking);
      clock.slept();
      if (socket.connected) probing.start(soon);
      else if (final(link.peek()) || closed) return;
      else if (healing) healing.hurry();
      else socket.connect();
    },
    close() {
      closed = true;
      probing.stop();
      healing?.stop();
      socket.disconnect();
    },
  };
}

const final = (state: LinkState): boolean => state.status === 'refused' || state.status === 'dismissed';

export const envelope = <Ask>(id: CommandId, ask: Ask): Envelope<Ask> => ({ id, ask });
