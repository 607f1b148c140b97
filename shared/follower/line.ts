import { io, type Socket } from 'socket.io-client';
import type { ClientToServer, Credentials, ServerToClient } from '../wire/protocol.ts';
import type { HealingOptions } from './healing.ts';

export type FollowerSocket = Socket<ServerToClient, ClientToServer>;

/** A socket, and how it is opened anew; undefined where it opens itself anew. */
export interface Line {
  readonly socket: FollowerSocket;
  readonly mend: Pick<HealingOptions, 'attempt' | 'onBlocked'> | undefined;
}

interface Dialling {
  readonly credentials: Credentials;
  /** The newest version that this device has seen. */
  readonly known: () => number | undefined;
  /** Absent: the page's own. */
  readonly origin: string | undefined;
  /** Called with every packet that arrives. */
  readonly heard: () => void;
}

const failuresBeforePolling = 2;

/** Opens a line over the network. When it breaks it stays broken until it is mended. */
export function dial({ credentials, known, origin = window.location.origin, heard }: Dialling): Line {
  const socket: FollowerSocket = io(origin, {
    // For a proxy in front of several servers: devices of one evening go to the same one.
    query: { tasting: credentials.tasting },
    auth: (show) => show({ ...credentials, known: known() }),
    transports: ['websocket'],
    tryAllTransports: true,
    reconnection: false,
    forceNew: true,
  });
  const { io: manager } = socket;
  // An attempt is given up by who mends the line.
  manager.timeout(false);
  let failures = 0;
  let pollFirst = false;

  /** Where WebSockets fail again and again something on the way may not let them through: polling is tried as well. */
  function poll(): void {
    import('./polling.ts').then(
      ({ waysWithPolling: [socketWay, pollingWay] }) => {
        manager.opts.transports = pollFirst ? [pollingWay, socketWay] : [socketWay, pollingWay];
      },
      () => {
        failures = 0;
      },
    );
  }
  manager.on('open', () => {
    failures = 0;
    manager.engine.on('packet', heard);
  });
  manager.on('error', () => {
    failures += 1;
    if (failures === failuresBeforePolling) poll();
  });
  return {
    socket,
    mend: {
      attempt() {
        socket.disconnect();
        socket.connect();
      },
      onBlocked() {
        pollFirst = true;
        poll();
      },
    },
  };
}

/** Whether a server answers a small request; a proxy that says it has none does not count. */
export const lookAt =
  (origin = window.location.origin): HealingOptions['look'] =>
  async (within) => {
    const given = new AbortController();
    const timer = setTimeout(() => given.abort(), within);
    try {
      const answer = await fetch(`${origin}/healthz`, { cache: 'no-store', signal: given.signal });
      return answer.ok;
    } catch {
      return false;
    } finally {
      clearTimeout(timer);
    }
  };
