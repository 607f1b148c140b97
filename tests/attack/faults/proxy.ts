import { createServer, connect as dial, type Server, type Socket } from 'node:net';

/** What happens to the bytes of a stretch of network. */
type Weather =
  | { readonly kind: 'fair' }
  /** Nothing arrives and nobody is told; what was sent meanwhile arrives when it is over, as TCP sends again. */
  | { readonly kind: 'blackhole' }
  /** Everything arrives, later: ms each way. When it is over, what is on its way arrives at once. */
  | { readonly kind: 'slow'; readonly ms: number };

/** A stretch of network between devices and a server, on this machine only, whose weather the test makes. */
export interface FaultProxy {
  readonly origin: string;
  weather(next: Weather): void;
  /** Every connection breaks off with a reset, as when a router restarts. */
  reset(): void;
  /** The server's ends are gone, and the devices' ends look open for ever, as a phone finds them when it wakes. */
  leaveHalfOpen(): void;
  readonly connections: number;
  close(): Promise<void>;
}

interface Pair {
  readonly near: Socket;
  readonly far: Socket;
  dead: boolean;
}

/** One direction of one connection: what is on its way, in order. */
interface Lane {
  readonly waiting: { readonly due: number; readonly act: () => void }[];
  timer: NodeJS.Timeout | undefined;
}

export async function openFaultProxy(port: number): Promise<FaultProxy> {
  const pairs = new Set<Pair>();
  const lanes = new Set<Lane>();
  let weather: Weather = { kind: 'fair' };

  const move = (lane: Lane): void => {
    clearTimeout(lane.timer);
    if (weather.kind === 'blackhole') return;
    for (let next = lane.waiting[0]; next !== undefined; next = lane.waiting[0]) {
      const wait = weather.kind === 'slow' ? next.due - performance.now() : 0;
      if (wait > 0) {
        lane.timer = setTimeout(() => move(lane), wait);
        return;
      }
      lane.waiting.shift();
      next.act();
    }
  };

  const carry = (pair: Pair, from: Socket, to: Socket): void => {
    const lane: Lane = { waiting: [], timer: undefined };
    lanes.add(lane);
    const send = (act: () => void): void => {
      const delay = weather.kind === 'slow' ? weather.ms : 0;
      lane.waiting.push({ due: performance.now() + delay, act: () => void (pair.dead || act()) });
      move(lane);
    };
    from.setNoDelay(true);
    from.on('data', (bytes) => send(() => to.write(bytes)));
    from.on('error', () => undefined);
    from.on('close', () =>
      send(() => {
        to.destroy();
        lanes.delete(lane);
        pairs.delete(pair);
      }),
    );
  };

  const join = (near: Socket): void => {
    const pair: Pair = { near, far: dial(port, '127.0.0.1'), dead: false };
    pairs.add(pair);
    carry(pair, near, pair.far);
    carry(pair, pair.far, near);
  };
  /** Begun in a hole: who gives up before it is over has never been heard of, for no SYN has arrived. */
  const unheard = new Map<Socket, Buffer[]>();
  const server = createServer((near) => {
    if (weather.kind !== 'blackhole') return join(near);
    const said: Buffer[] = [];
    unheard.set(near, said);
    near.on('data', (bytes) => {
      if (unheard.has(near)) said.push(bytes);
    });
    near.on('error', () => undefined);
    near.on('close', () => unheard.delete(near));
    return undefined;
  });

  return {
    origin: `http://127.0.0.1:${await listening(server)}`,
    get connections() {
      return pairs.size;
    },
    weather(next) {
      weather = next;
      for (const lane of lanes) move(lane);
      if (next.kind === 'blackhole') return;
      for (const [near, said] of [...unheard]) {
        unheard.delete(near);
        join(near);
        // TCP sends again what was not acknowledged.
        for (const bytes of said) near.emit('data', bytes);
      }
    },
    reset() {
      for (const { near, far } of pairs) {
        near.resetAndDestroy();
        far.destroy();
      }
    },
    leaveHalfOpen() {
      for (const pair of pairs) {
        pair.dead = true;
        pair.far.destroy();
      }
    },
    close: () =>
      new Promise((resolve) => {
        for (const { timer } of lanes) clearTimeout(timer);
        for (const { near, far } of pairs) {
          near.destroy();
          far.destroy();
        }
        for (const near of unheard.keys()) near.destroy();
        server.close(() => resolve());
      }),
  };
}

const listening = (server: Server): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : 0);
    });
  });
