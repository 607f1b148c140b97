import { createServer as createHttpServer, type Server as HttpServer, type IncomingMessage } from 'node:http';
import { createServer as createHttpsServer } from 'node:https';
import { join } from 'node:path';
import type { Duplex } from 'node:stream';
import type { TastingId } from '../core/ids.ts';
import { durationMs } from '../core/units.ts';
import { addressOf } from './access/address.ts';
import { Allowances } from './access/allowances.ts';
import { type CallSettings, callServersFor, noCallServers } from './access/call-servers.ts';
import { GuessThrottle } from './access/guess-throttle.ts';
import { Keyring } from './access/keys.ts';
import { HouseOpenings, isStrangers } from './access/open-houses.ts';
import { peersOf } from './access/peers.ts';
import { externalAddresses } from './addresses.ts';
import { type Chance, realChance } from './chance.ts';
import { type Clock, steadyClock } from './clock.ts';
import { guardedClock, reasonOf } from './guard.ts';
import { RecapDesk } from './http/recap/recap-desk.ts';
import { createSite } from './http/site.ts';
import { Conductors } from './live/conductors.ts';
import { createLiveServer, openGateway } from './live/gateway.ts';
import { createHouseWatch } from './live/house-watch.ts';
import { joinWrites } from './live/joined-writes.ts';
import { createLifeSigns, lookEvery } from './live/life-signs.ts';
import { type Line, LineGuard } from './live/line-guard.ts';
import { devicesIn } from './live/rooms.ts';
import { type Log, stderrLog } from './log.ts';
import { Metrics } from './ops/metrics.ts';
import { startRetention } from './ops/retention.ts';
import { startStoreCheck } from './ops/store-check.ts';
import { FrontDoor, movesIn } from './passing/front-door.ts';
import { Heirs } from './passing/heirs.ts';
import { peerRoute } from './passing/peer-route.ts';
import { SharedCounts } from './passing/shared-counts.ts';
import type { Cluster } from './store/postgres/cluster.ts';
import type { Store } from './store/store.ts';

export interface ServerOptions {
  /** Closed when the server stops. */
  readonly store: Store;
  /** Where several processes serve together: the others. `address` is where they reach this one. */
  readonly cluster?: {
    readonly others: Cluster;
    readonly address: (port: number) => string;
    /** Ms that whoever balances between processes needs to see that this one ends. */
    readonly seenWithin?: number;
  };
  /** 0 takes any free port. */
  readonly port?: number;
  /** Address to listen on; absent: all of this machine's. */
  readonly host?: string;
  readonly houseKey?: string;
  readonly clock?: Clock;
  readonly chance?: Chance;
  readonly log?: Log;
  /** Other origins under which this server is reached, such as `https://tasting.example`. */
  readonly origins?: readonly string[];
  /** Folder with the built pages. */
  readonly pages?: string;
  readonly tls?: { readonly key: Buffer | string; readonly cert: Buffer | string };
  readonly seatLimit?: number;
  /** Beside which servers guests from afar are called; absent: across one network. */
  readonly callServers?: CallSettings;
  /** Whether a stranger may make a house of their own. */
  readonly openHouses?: boolean;
  /** Ms after which a tasting that nobody touches is deleted; absent: kept until somebody deletes it. */
  readonly keepFor?: number;
  /** Ms after which a host without a device counts as gone [P8]. */
  readonly hostGrace?: number;
  /** Ms after which a seat without a device no longer counts for the pace of the room. */
  readonly seatGrace?: number;
}

export interface RunningServer {
  readonly port: number;
  /** On this machine, without a path. */
  readonly url: string;
  /** Where guests reach it, best first, without a path. */
  readonly guestOrigins: readonly string[];
  readonly houseKey: string;
  /** An evening with everything in it; whoever is there is told. */
  remove(tasting: TastingId): Promise<void>;
  /** Tells the devices, finishes what is under way, closes the store. */
  stop(): Promise<void>;
}

/** Enough for a whole crowd that comes back at once after a restart. */
const backlog = 4096;

/**
 * Connections from one address that came to nothing. Whoever shows a right key gets theirs back, so that a table of a
 * thousand behind one router comes back at once, after a restart too.
 */
const fruitless = { perSecond: 50, burst: 1500 };

/** A gap that other processes leave between them while an evening goes from one to another: it was watched. */
const failover = durationMs(5000);

/** Starts listening. Rejects with the system's error when the port cannot be had; the store is then still open. */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { store, origins = [], chance = realChance, cluster } = options;
  const log = options.log ?? stderrLog('warn');
  // Every alarm of the server goes through this clock, so that none can end the process.
  const clock = guardedClock(options.clock ?? steadyClock(), (error) =>
    log.error({ reason: reasonOf(error) }, 'an alarm failed'),
  );
  const houseKey = options.houseKey ?? chance.key();
  const http = options.tls === undefined ? createHttpServer() : createHttpsServer({ ...options.tls });
  const knocks = new Allowances(clock, fruitless);
  const mayKnock = (request: IncomingMessage) => knocks.take(addressOf(request));
  const io = createLiveServer(origins, { mayKnock, clock }, cluster?.others);
  const graces = {
    host: durationMs(options.hostGrace ?? 30_000),
    seat: durationMs(options.seatGrace ?? 15_000),
  };
  const conductors = new Conductors({
    store,
    clock,
    io,
    log,
    graces,
    chance,
    seatLimit: options.seatLimit ?? 200,
    callServers: ({ hash }) => callServersFor(options.callServers ?? noCallServers, hash, clock.now()),
    sweepEvery: durationMs(5 * 60_000),
    ...(cluster === undefined ? {} : { watchedBefore: failover }),
  });
  const keyring = new Keyring(store, clock, houseKey);
  const secure = options.tls !== undefined;
  const scheme = secure ? 'https' : 'http';
  let port = options.port ?? 0;
  const guestOrigins = () => [...origins, ...externalAddresses().map((ip) => `${scheme}://${ip}:${port}`)];
  const metrics = new Metrics();
  const guesses = new GuessThrottle(clock);
  const openings = new HouseOpenings(clock);
  const recaps = new RecapDesk();
  let stopping = false;
  const peers = peersOf(houseKey, cluster?.others.name);
  const frontDoor = cluster && new FrontDoor({ cluster: cluster.others, peers, log });
  const shared =
    cluster &&
    Object.entries({ guesses, openings }).map(
      ([name, counted]) => new SharedCounts(name, counted, cluster.others.draining, peers),
    );
  const heirs = cluster && new Heirs({ cluster: cluster.others, peers, conductors, log });
  const site = createSite(
    {
      store,
      keyring,
      conductors,
      guesses,
      chance,
      clock,
      log,
      metrics,
      standing: () => ({
        devices: devicesIn(io),
        sessions: conductors.working,
        ...(cluster && { cluster: cluster.others.figures() }),
      }),
      origins,
      guestOrigins,
      callServers: options.callServers ?? noCallServers,
      pages: options.pages ?? join(import.meta.dirname, '..', 'dist'),
      secure,
      openHouses: options.openHouses ?? false,
      openings,
      ready: () => (stopping ? 'ending' : cluster?.others.holds() === false ? 'no' : 'yes'),
      ...(frontDoor &&
        heirs &&
        shared && {
          passOn: [
            peerRoute(peers, Object.assign({}, heirs.steps, movesIn(io), ...shared.map(({ step }) => step))),
            frontDoor.route,
          ],
          wentMeanwhile: frontDoor.wentMeanwhile,
        }),
    },
    recaps,
  );
  http.on('request', site);
  // After the site: whoever comes second takes the requests of its own path away from the first.
  io.attach(http);
  joinWrites(io);
  const lines = new LineGuard(clock);
  io.engine.on('connection', (line: Line) => lines.watch(line));
  openGateway({
    io,
    conductors,
    keyring,
    lines,
    clock,
    log,
    metrics,
    ...(cluster && { justLeft: cluster.others.justLeft, passing: peers.passing }),
    onEntered: (request, tasting) => {
      const address = addressOf(request);
      knocks.giveBack(address);
      void isStrangers(store, tasting).then((open) => open || guesses.cameInFrom(address));
    },
  });
  frontDoor?.standBefore(http);
  const connections = tracked(http);
  try {
    port = await listen(http, port, options.host);
    await cluster?.others.join(cluster.address(port), {
      lost: (tasting) => conductors.lost(tasting),
      taken: (tasting) => void conductors.of(tasting),
      expired: () => void io.disconnectSockets(true),
      conducted: (tasting) => conductors.conducts(tasting),
    });
  } catch (error) {
    await conductors.stop();
    metrics.stop();
    throw error;
  }

  // By real time, for it is about lines and not about the evening.
  const lifeSigns = setInterval(createLifeSigns(io, conductors, log), lookEvery).unref();
  const houseWatch = setInterval(createHouseWatch(keyring, conductors, log), 1000).unref();
  const endStoreCheck = startStoreCheck({ store, clock, log });
  const endRetention =
    options.keepFor === undefined
      ? () => undefined
      : startRetention({
          store,
          conductors,
          clock,
          log,
          keepFor: durationMs(options.keepFor),
          ...(cluster && {
            mine: async (tasting: TastingId) => (await cluster.others.claim(tasting)).at === 'here',
          }),
        });

  let stopped: Promise<void> | undefined;
  const stop = async () => {
    stopping = true;
    await heirs?.handOver(cluster?.seenWithin ?? 0);
    await frontDoor?.close();
    for (const each of shared ?? []) each.close();
    clearInterval(lifeSigns);
    clearInterval(houseWatch);
    endStoreCheck();
    endRetention();
    io.emit('dismissal', 'server-stopping');
    await conductors.stop();
    // Also closes the HTTP server; what is kept alive without a request would hold it open.
    const closed = io.close();
    setTimeout(() => {
      for (const each of connections) each.destroy();
    }, 500).unref();
    http.closeIdleConnections();
    await closed;
    await recaps.stop();
    await conductors.stop();
    metrics.stop();
    await store.close();
  };
  return {
    port,
    url: `${scheme}://${options.host === undefined || options.host === '0.0.0.0' ? 'localhost' : options.host}:${port}`,
    get guestOrigins() {
      return guestOrigins();
    },
    houseKey,
    remove: (tasting) => conductors.remove(tasting),
    stop: () => {
      stopped ??= stop();
      return stopped;
    },
  };
}

function listen(http: HttpServer, port: number, host: string | undefined): Promise<number> {
  return new Promise((resolve, reject) => {
    http.once('error', reject);
    http.listen({ port, backlog, ...(host === undefined ? {} : { host }) }, () => {
      http.off('error', reject);
      const address = http.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}

function tracked(http: HttpServer): Set<Duplex> {
  const open = new Set<Duplex>();
  // One for all of them: a closure for each would stand for as long as its line does.
  function closed(this: Duplex): void {
    open.delete(this);
  }
  http.on('connection', (socket) => {
    open.add(socket);
    socket.on('close', closed);
  });
  return open;
}
