import { Server } from 'socket.io';
import { largestFrame, type RefusalCode } from '../../shared/wire/protocol.ts';
import type { Keyring } from '../access/keys.ts';
import { originAllowed } from '../access/origin.ts';
import type { Clock } from '../clock.ts';
import type { Log } from '../log.ts';
import type { Metrics, Outcome } from '../ops/metrics.ts';
import { refusal } from '../refusal.ts';
import type { Conductors } from './conductors.ts';
import { admit } from './handshake.ts';
import { type Answer, answerTo, isKnown } from './requests.ts';
import { type Badge, type LiveServer, type LiveSocket, letGo } from './rooms.ts';
import { TokenBucket } from './token-bucket.ts';

/** Per device. A phone asks a few times a minute and probes eight times on connecting. */
const allowed = { perSecond: 20, burst: 60 };

/** Not yet attached to a server. */
export function createLiveServer(origins: readonly string[]): LiveServer {
  return new Server({
    serveClient: false,
    // A phone that slept is found out within fifteen seconds.
    pingInterval: 10_000,
    pingTimeout: 5_000,
    connectTimeout: 10_000,
    maxHttpBufferSize: largestFrame,
    // Costs several times more time than it saves on views this small.
    perMessageDeflate: false,
    // A foreign page can open a WebSocket whatever CORS says, so that this is where it is stopped.
    allowRequest: ({ headers }, answer) =>
      originAllowed(headers.origin, headers.host, origins)
        ? answer(null, true)
        : answer('foreign-origin' satisfies RefusalCode, false),
  });
}

export interface GatewayParts {
  readonly io: LiveServer;
  readonly conductors: Conductors;
  readonly keyring: Keyring;
  readonly clock: Clock;
  readonly log: Log;
  readonly metrics: Pick<Metrics, 'asked'>;
}

/** The door for devices: who is this, what may they ask, and one short answer to everything. */
export function openGateway({ io, conductors, keyring, clock, log, metrics }: GatewayParts): void {
  io.use((socket, next) => {
    const admitted = tried(() => admit(socket.handshake.auth, keyring, conductors));
    if (typeof admitted === 'string') return next(refused(admitted));
    const allowance = new TokenBucket(clock, allowed.perSecond, allowed.burst);
    socket.data = { ...admitted, allowance } satisfies Badge;
    next();
  });

  io.on('connection', (socket) => {
    const { tasting, bearer } = socket.data;
    const conductor = conductors.of(tasting);
    if (conductor === undefined) return void socket.disconnect(true);
    socket.on('disconnect', () => conductor.presence.left(socket.id));
    socket.on('error', (error) => log.debug({ tasting, reason: error.name }, 'socket error'));
    socket.use((packet) => void receive(socket, packet));
    conductor.presence.arrived(socket.id, bearer);
    conductor.publisher.welcome(socket);
    if (bearer.role === 'host') conductor.pouring.show(socket);
  });

  async function receive(socket: LiveSocket, packet: readonly unknown[]): Promise<void> {
    const [event, payload] = packet;
    const reply = packet.at(-1);
    // Without a way to answer nothing is done: no device of ours asks like this.
    if (typeof reply !== 'function') return;
    const answer = (said: Answer): void => {
      metrics.asked(isKnown(event) ? event : 'unknown', outcomeOf(said));
      reply(said);
    };
    if (!socket.data.allowance.take()) return answer(refusal('too-fast'));
    if (!isKnown(event)) return answer(refusal('unknown-event'));
    if (packet.length !== 3) return answer(refusal('malformed'));
    const { tasting, hash } = socket.data;
    try {
      if (!keyring.stands(hash)) {
        answer(refusal('wrong-key'));
        return letGo(socket, 'key-withdrawn');
      }
      const conductor = conductors.of(tasting);
      if (conductor === undefined) return answer(refusal('no-such-tasting'));
      answer(await answerTo(event, { socket, conductor, payload }));
    } catch (error) {
      log.error({ tasting, event, reason: error instanceof Error ? error.name : 'unknown' }, 'not answered');
      answer(refusal('not-stored'));
    }
  }

  /** A session that cannot be read is refused like one that cannot be written. */
  function tried<Result>(run: () => Result): Result | RefusalCode {
    try {
      return run();
    } catch (error) {
      log.error(
        { reason: error instanceof Error ? error.message : 'unknown' },
        'a session could not be read',
      );
      return 'not-stored';
    }
  }
}

function outcomeOf(said: Answer): Outcome {
  if (!('ok' in said) || said.ok) return 'done';
  return said.code === 'not-stored' ? 'not-stored' : 'refused';
}

/** The client gets `data` with the error. */
const refused = (code: RefusalCode): Error => Object.assign(new Error(code), { data: refusal(code) });
