import type { IncomingMessage } from 'node:http';
import { Server } from 'socket.io';
import type { TastingId } from '../../core/ids.ts';
import { durationMs, later } from '../../core/units.ts';
import { largestFrame, type RefusalCode, setAsideFrom } from '../../shared/wire/protocol.ts';
import { Allowances, type Pace } from '../access/allowances.ts';
import type { Identity, Keyring } from '../access/keys.ts';
import { originAllowed } from '../access/origin.ts';
import type { Clock } from '../clock.ts';
import { guarded, reasonOf } from '../guard.ts';
import type { Log } from '../log.ts';
import type { Metrics, Outcome } from '../ops/metrics.ts';
import { refusal } from '../refusal.ts';
import { SetAside } from '../store/set-aside.ts';
import { StoreFailure } from '../store/store.ts';
import type { Conductor } from './conductor.ts';
import type { Conductors } from './conductors.ts';
import { broadcastFlat } from './flat-broadcast.ts';
import { forgetRequest } from './forgotten-request.ts';
import { admit } from './handshake.ts';
import { joinGreeting, joinOpening } from './joined-writes.ts';
import type { LineGuard } from './line-guard.ts';
import { type Leave, Mouth } from './mouth.ts';
import { type Answer, answerTo, isKnown } from './requests.ts';
import { type Badge, type LiveServer, type LiveSocket, letGo, seatRoom, socketsIn } from './rooms.ts';
import { SeatDevices } from './seat-devices.ts';

/**
 * Messages of a seat, or of whoever else holds one key, from all their devices together. A phone asks a few times a
 * minute, probes eight times on connecting, and saves each field at most every 0.7 s while somebody writes.
 */
const messages: Pace = { perSecond: 20, burst: 120 };
/** Times that a seat may connect: a phone in a bad spot comes back every few seconds, a flood a hundred times in one. */
const arrivals: Pace = { perSecond: 0.5, burst: 15 };
/** Who connects more often is told so after this many ms, and no more than so many wait for it. */
const tarry = durationMs(2000);
const mostTarrying = 1000;
/** Messages beyond the allowance that are still told so; who goes on is let go, for a page waits when it is told. */
const patience: Pace = { perSecond: 10, burst: 200 };
/**
 * All guests and screens of one evening, for each chair: more than a whole table that comes back after a restart and
 * writes at once, and what it asks of the server is bounded. The host is not counted among them.
 */
const ofEvening = (chairs: number): Pace => ({ perSecond: 100 + 2 * chairs, burst: 1000 + 20 * chairs });

export interface Knocking {
  /** Whether this address may try to come in now. */
  readonly mayKnock: (request: IncomingMessage) => boolean;
  /** By which who may not waits for its answer. */
  readonly clock: Clock;
}

/** Not yet attached to a server. Without `knocking` everybody may try to come in. */
export function createLiveServer(origins: readonly string[], knocking?: Knocking, leave?: Leave): LiveServer {
  const holdBack = knocking && holdingBack(knocking.clock);
  const io: LiveServer = new Server({
    serveClient: false,
    // A phone that slept is found out within fifteen seconds.
    pingInterval: 10_000,
    pingTimeout: 5_000,
    connectTimeout: 10_000,
    maxHttpBufferSize: largestFrame,
    // Costs several times more time than it saves on views this small.
    perMessageDeflate: false,
    // A foreign page can open a WebSocket whatever CORS says, so that this is where it is stopped.
    allowRequest: (request, answer) => {
      const { origin, host } = request.headers;
      if (!originAllowed(origin, host, origins)) answer('foreign-origin' satisfies RefusalCode, false);
      else if (holdBack === undefined || knocking?.mayKnock(request)) {
        joinOpening(request);
        answer(null, true);
      } else {
        // Who hangs up meanwhile must not end the process: nobody else listens to the line of an upgrade.
        request.socket.on('error', guarded(ignored, ignored));
        holdBack(() => answer('too-fast' satisfies RefusalCode, false));
      }
    },
  });
  const mouth = leave && new Mouth(leave, () => io.disconnectSockets(true));
  broadcastFlat(io, mouth);
  if (mouth !== undefined) io.use(speakingThrough(mouth));
  return io;
}

/** Refused at once, a flood comes back at once, thousands of times a second; while it waits it costs nothing. */
function holdingBack(clock: Clock): (refuse: () => void) => void {
  let tarrying = 0;
  return (refuse) => {
    if (tarrying >= mostTarrying) return refuse();
    tarrying += 1;
    clock.at(later(clock.now(), tarry), () => {
      tarrying -= 1;
      refuse();
    });
  };
}

const ignored = (): void => undefined;

/** What is sent to one device by itself, answers too, while somebody else may conduct the evening. */
const speakingThrough =
  (mouth: Mouth) =>
  (socket: LiveSocket, next: () => void): void => {
    const send = socket as unknown as { packet: (...sent: readonly unknown[]) => void };
    const usual = send.packet.bind(socket);
    send.packet = (...sent) => mouth.say(() => usual(...sent));
    next();
  };

export interface GatewayParts {
  readonly io: LiveServer;
  readonly conductors: Conductors;
  readonly keyring: Keyring;
  readonly lines: Pick<LineGuard, 'heldBy'>;
  readonly clock: Clock;
  readonly log: Log;
  readonly metrics: Pick<Metrics, 'asked'>;
  /** Whether another process may have this evening since a moment ago: then nothing that is not here is refused for good. */
  readonly justLeft?: (tasting: TastingId) => boolean;
  /** The process that passes this on. */
  readonly passing?: (request: IncomingMessage) => string | undefined;
  /** Told of who has come in with a key that opens something, and into which evening. */
  readonly onEntered?: (request: IncomingMessage, tasting: TastingId) => void;
}

/** The door for devices: who is this, what may they ask, and one short answer to everything. */
export function openGateway(parts: GatewayParts): void {
  const { io, conductors, keyring, clock, log, metrics } = parts;
  const seatsArriving = new Allowances(clock, arrivals);
  const bearersAsking = new Allowances(clock, messages);
  const bearersTold = new Allowances(clock, patience);
  const eveningsAsking = new Allowances(clock, ofEvening(conductors.seatLimit));
  const holdBack = holdingBack(clock);
  const devices = new SeatDevices(clock, ({ data: { tasting, bearer, hash } }) =>
    bearer.role === 'guest' ? conductors.of(tasting)?.devices.opens(bearer.seat, hash) === true : false,
  );
  /** At whom a device has arrived, who may have been read again since. */
  const arrivedAt = new WeakMap<LiveSocket, Conductor>();

  /** Whose key was shown, from one look to the next. */
  const learned = new WeakMap<LiveSocket, Identity>();

  // A store that does not answer is found out by what comes next.
  io.use((socket, next) => {
    keyring
      .learn(socket.handshake.auth.key)
      .then((identity) => void (identity && learned.set(socket, identity)))
      .then(
        () => next(),
        () => next(),
      );
  });
  io.use((socket, next) => {
    const { auth } = socket.handshake;
    const identify = (key: string) => learned.get(socket) ?? keyring.identify(key);
    const badge = tried(auth.protocol, () => admit(auth, identify, conductors));
    // Without a code the device comes again.
    if (typeof badge === 'string')
      return next(parts.justLeft?.(auth.tasting) ? new Error('elsewhere') : refused(badge));
    parts.lines.heldBy(socket.conn, holderOf(badge));
    if (badge.bearer.role === 'guest' && !seatsArriving.take(holderOf(badge)))
      return holdBack(() => next(refused('too-fast')));
    parts.onEntered?.(socket.request, badge.tasting);
    socket.data = { ...badge, through: parts.passing?.(socket.request) };
    joinGreeting(socket.conn as unknown as Parameters<typeof joinGreeting>[0]);
    next();
  });

  // One function for all devices: a closure for each would stand for the whole evening.
  const hear = guarded(receive, unheard);
  const left = guarded(function (this: LiveSocket, reason: string) {
    const conductor = arrivedAt.get(this);
    conductor?.publisher.call.left(this, reason.startsWith('server'));
    conductor?.presence.left(this.id);
  }, notServed);
  const faulty = guarded(function (this: LiveSocket, { name }: Error) {
    log.debug({ tasting: this.data.tasting, reason: name }, 'socket error');
  }, unheard);
  const welcome = guarded(function (this: LiveSocket, conductor: Conductor) {
    const { tasting, bearer, known } = this.data;
    if (bearer.role === 'guest') {
      const surplus = devices.arrived(this, socketsIn(io, seatRoom(tasting, bearer.seat)));
      if (surplus !== undefined) letGo(surplus, 'too-many-devices');
    }
    conductor.presence.arrived(this.id, bearer);
    conductor.publisher.welcome(this, conductor.lostEnd.heard(bearer, known, conductor.standing.version));
    if (bearer.role === 'host' || bearer.role === 'helper') conductor.pouring.show(this);
    if (conductor.lostEnd.missing > 0) conductor.publisher.showLostEnd(conductor.lostEnd.missing);
  }, notServed);

  io.on(
    'connection',
    guarded((socket: LiveSocket) => {
      const conductor = conductors.of(socket.data.tasting);
      if (conductor === undefined) return void socket.disconnect(true);
      arrivedAt.set(socket, conductor);
      forgetRequest(socket);
      // Nobody is spoken to by the id of a line, for which Socket.IO keeps a room each.
      void socket.leave(socket.id);
      socket.on('disconnect', left);
      socket.on('error', faulty);
      socket.use((packet) => hear(socket, packet));
      welcome.call(socket, conductor);
    }, unheard),
  );

  /** A store that does not answer is asked again when the device comes back. */
  function notServed(this: LiveSocket, error: unknown): void {
    const conductor = arrivedAt.get(this);
    if (error instanceof StoreFailure)
      log.error({ tasting: this.data.tasting, reason: error.message }, 'not welcomed');
    else if (conductor !== undefined) conductors.failed(conductor, error);
    this.disconnect(true);
  }

  async function receive(socket: LiveSocket, packet: readonly unknown[]): Promise<void> {
    const [event, payload] = packet;
    const reply = packet.at(-1);
    // Without a way to answer nothing is done: no device of ours asks like this.
    if (typeof reply !== 'function') return;
    const answer = (said: Answer): void => {
      metrics.asked(isKnown(event) ? event : 'unknown', outcomeOf(said));
      reply(said);
    };
    if (!mayAsk(socket.data)) {
      if (!bearersTold.take(holderOf(socket.data))) return void socket.disconnect(true);
      return answer(refusal('too-fast'));
    }
    if (!isKnown(event)) return answer(refusal('unknown-event'));
    if (packet.length !== 3) return answer(refusal('malformed'));
    const { tasting, hash } = socket.data;
    let conductor: Conductor | undefined;
    try {
      if (!keyring.stands(hash)) {
        answer(refusal('wrong-key'));
        return letGo(socket, 'key-withdrawn');
      }
      conductor = conductors.of(tasting);
      if (conductor === undefined) return answer(refusal('no-such-tasting'));
      answer(await answerTo(event, { socket, conductor, payload }));
    } catch (error) {
      log.error({ tasting, event, reason: reasonOf(error) }, 'not answered');
      if (conductor !== undefined && !(error instanceof StoreFailure)) conductors.failed(conductor, error);
      answer(refusal(codeOf(error, socket.data.protocol)));
    }
  }

  /** Whatever goes wrong where no conductor is concerned. */
  function unheard(error: unknown): void {
    log.error({ reason: reasonOf(error) }, 'a device could not be heard');
  }

  function mayAsk(badge: Badge): boolean {
    if (!bearersAsking.take(holderOf(badge))) return false;
    return badge.bearer.role === 'host' || eveningsAsking.take(badge.tasting);
  }

  /** A session that cannot be read is refused like one that cannot be written. */
  function tried<Result>(protocol: unknown, run: () => Result): Result | RefusalCode {
    try {
      return run();
    } catch (error) {
      log.error(
        { reason: error instanceof Error ? error.message : 'unknown' },
        'a session could not be read',
      );
      return codeOf(error, protocol);
    }
  }
}

/** Whose messages are counted together: a seat with all its keys that open its notes, or all that do not, or one key. */
const holderOf = (badge: Badge): string => `${seatOf(badge)}${badge.opens ? '' : '/aside'}`;

const seatOf = ({ tasting, bearer, hash }: Badge): string =>
  bearer.role === 'guest' ? `${tasting}/${bearer.seat}` : `${tasting}/${hash}`;

/** A page of before knows no evening that is set aside. */
const codeOf = (error: unknown, protocol: unknown): RefusalCode =>
  error instanceof SetAside && typeof protocol === 'number' && protocol >= setAsideFrom
    ? 'set-aside'
    : 'not-stored';

function outcomeOf(said: Answer): Outcome {
  if (typeof said === 'number' || !('ok' in said) || said.ok) return 'done';
  return said.code === 'not-stored' ? 'not-stored' : 'refused';
}

/** The client gets `data` with the error. */
const refused = (code: RefusalCode): Error => Object.assign(new Error(code), { data: refusal(code) });
