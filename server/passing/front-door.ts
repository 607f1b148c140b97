import type { Server as HttpServer, IncomingMessage, ServerResponse } from 'node:http';
import type { Duplex } from 'node:stream';
import { setTimeout as wait } from 'node:timers/promises';
import type { ErrorRequestHandler, Request, RequestHandler } from 'express';
import { z } from 'zod';
import { type TastingId, tastingId } from '../../core/ids.ts';
import { readCode } from '../access/join-code.ts';
import { hashOf } from '../access/keys.ts';
import type { Peers } from '../access/peers.ts';
import { reasonOf } from '../guard.ts';
import { ComeAgain, Refused } from '../http/answers.ts';
import { type LiveServer, letMove } from '../live/rooms.ts';
import type { Log } from '../log.ts';
import type { Cluster } from '../store/postgres/cluster.ts';
import { StoreFailure } from '../store/store.ts';
import { type Passed, passConnection, passRequest } from './pass-on.ts';
import { askPeer, type PeerStep } from './peer-route.ts';

export interface FrontDoorParts {
  readonly cluster: Cluster;
  readonly peers: Peers;
  readonly log: Log;
}

/** How often it is asked whether an evening whose connections are passed on has another owner; in ms. */
const lookEvery = 1000;

/** Ms for which those who are told to come anew have to go by themselves. */
const goingTakes = 300;

interface PassedOn extends Owner {
  readonly end: () => void;
}

const namePattern = /^[A-Za-z0-9_-]{1,40}$/;
const named = z.object({
  tasting: z.string().regex(namePattern).optional(),
  code: z.string().max(60).optional(),
});

/**
 * Any device at any process: what concerns an evening that is conducted elsewhere is passed on to there, and one that nobody
 * conducts is claimed. So the rest of this process only ever sees what is its own.
 */
export class FrontDoor {
  readonly #parts: FrontDoorParts;
  readonly #passed = new Map<TastingId, Set<PassedOn>>();
  /** Requests let in to what was here then. */
  readonly #letIn = new WeakMap<IncomingMessage, TastingId>();
  readonly #timer: NodeJS.Timeout;

  constructor(parts: FrontDoorParts) {
    this.#parts = parts;
    this.#timer = setInterval(() => void this.#look().catch(() => undefined), lookEvery);
    this.#timer.unref();
  }

  /** Stands before the sockets' own listeners, which are asked only for what is here. To be called once they are there. */
  standBefore(http: HttpServer): void {
    const { peers } = this.#parts;
    const inside = (event: 'request' | 'upgrade') => {
      const listeners = http.listeners(event);
      http.removeAllListeners(event);
      return (...args: readonly unknown[]): void => {
        for (const each of listeners) each.apply(http, [...args]);
      };
    };
    const [onRequest, onUpgrade] = [inside('request'), inside('upgrade')];
    http.on('request', (request: IncomingMessage, response: ServerResponse) => {
      const passed = peers.passedBy(request);
      const tasting = socketsTasting(request);
      if (tasting === undefined) return onRequest(request, response);
      const turnedAway = () => response.writeHead(503).end();
      this.#route(
        tasting,
        passed,
        () => onRequest(request, response),
        turnedAway,
        async (to) => passRequest(request, response, undefined, to, peers),
      );
    });
    http.on('upgrade', (request: IncomingMessage, socket: Duplex, head: Buffer) => {
      const passed = peers.passedBy(request);
      const tasting = socketsTasting(request);
      if (tasting === undefined) return onUpgrade(request, socket, head);
      const early = () => socket.destroy();
      socket.on('error', early);
      const turnedAway = () => socket.end('HTTP/1.1 503 Service Unavailable\r\nConnection: close\r\n\r\n');
      const here = () => {
        socket.off('error', early);
        onUpgrade(request, socket, head);
      };
      this.#route(tasting, passed, here, turnedAway, async (to) => {
        const { how, far } = await passConnection(request, socket, head, to, peers);
        if (far !== undefined) this.#keep(tasting, { ...to, end: () => far.destroy() }, socket);
        return how;
      });
    });
  }

  /** Among the routes, behind what reads a body. */
  readonly route: RequestHandler = async (request, response, next) => {
    const { peers, log } = this.#parts;
    const tasting = await this.#asked(request);
    if (tasting === undefined) return next();
    const body =
      request.body === undefined || Buffer.isBuffer(request.body) ? undefined : JSON.stringify(request.body);
    const how = await this.#send(tasting, peers.passedBy(request), (to) =>
      passRequest(request, response, body, to, peers),
    ).catch((error: unknown) => {
      if (!(error instanceof StoreFailure)) throw error;
      log.error({ tasting, reason: error.message }, 'a request found no process');
      return 'turned-away' as const;
    });
    if (how === 'turned-away') throw new ComeAgain();
    // It may have been carried out there.
    if (how === 'unanswered') throw new Refused('not-stored');
    if (how === 'here') this.#letIn.set(request, tasting);
    if (how !== 'passed') next();
  };

  /** Behind the routes: a key that opens nothing here any more may open it where the evening is now. */
  readonly wentMeanwhile: ErrorRequestHandler = (error, request, _response, next) => {
    const tasting = this.#letIn.get(request);
    const went = tasting !== undefined && this.#parts.cluster.justLeft(tasting);
    next(went && error instanceof Refused ? new ComeAgain() : error);
  };

  /** Those whose lines are passed on here hear of it from the owners, and come anew at once; then what is left is cut. */
  async close(): Promise<void> {
    const { peers, cluster } = this.#parts;
    clearInterval(this.#timer);
    const passed = () => [...this.#passed.values()].flatMap((all) => [...all]);
    const owners = new Set(passed().map(({ address }) => address));
    await Promise.all([...owners].map((each) => askPeer(peers, each, 'moved', { through: cluster.name })));
    for (let waited = 0; passed().length > 0 && waited < goingTakes; waited += 10) await wait(10);
    for (const { end } of passed()) end();
  }

  #route(
    tasting: TastingId,
    passed: boolean,
    here: () => void,
    turnedAway: () => void,
    pass: (to: Owner) => Promise<Passed>,
  ): void {
    this.#send(tasting, passed, pass)
      .then((how) => {
        if (how === 'turned-away' || how === 'unanswered') turnedAway();
        else if (how !== 'passed') here();
      })
      .catch((error: unknown) => {
        this.#parts.log.error(
          { tasting, reason: error instanceof StoreFailure ? error.message : reasonOf(error) },
          'a device found no process',
        );
        turnedAway();
      });
  }

  async #send(
    tasting: TastingId,
    passed: boolean,
    pass: (to: Owner) => Promise<Passed>,
  ): Promise<'here' | 'nowhere' | 'turned-away' | Exclude<Passed, 'refused'>> {
    const { cluster } = this.#parts;
    const where = await cluster.claim(tasting);
    if (where.at !== 'elsewhere') return where.at;
    // Whoever passed it on was told of an owner that is none any more: the device comes again.
    if (passed) return 'turned-away';
    const how = await pass(where);
    if (how !== 'refused') return how;
    const { at } = await cluster.claim(tasting, where.process);
    return at === 'elsewhere' ? 'turned-away' : at;
  }

  async #asked(request: Request): Promise<TastingId | undefined> {
    const { cluster } = this.#parts;
    const [, first, second = ''] = request.path.split('/');
    if ((first === 'tastings' || first === 'keepsake') && namePattern.test(second) && second !== 'list')
      return tastingId(second);
    const body = named.safeParse(request.body).data;
    if (body?.tasting !== undefined) return tastingId(body.tasting);
    const code = readCode(body?.code ?? (first === 'invitations' ? decoded(second) : ''))?.code;
    if (code !== undefined) return cluster.tastingOfCode(code);
    const key = /^Bearer ([A-Za-z0-9_-]{1,128})$/i.exec(request.headers.authorization ?? '')?.[1];
    return key === undefined ? undefined : cluster.tastingOfKey(hashOf(key));
  }

  #keep(tasting: TastingId, passed: PassedOn, near: Duplex): void {
    const all = this.#passed.get(tasting) ?? new Set();
    this.#passed.set(tasting, all.add(passed));
    near.once('close', () => {
      all.delete(passed);
      if (all.size === 0 && this.#passed.get(tasting) === all) this.#passed.delete(tasting);
    });
  }

  /** A process that stands still keeps its connections: who hangs on one is let go when another has taken over. */
  async #look(): Promise<void> {
    if (this.#passed.size === 0) return;
    const owners = await this.#parts.cluster.ownersOf([...this.#passed.keys()]);
    for (const [tasting, all] of this.#passed)
      for (const { process, end } of all) if (owners.get(tasting) !== process) end();
  }
}

const moving = z.object({ through: z.string().max(40) });

/** What a process that ends asks of the owners of what it passes on. */
export const movesIn = (io: LiveServer): Readonly<Record<'moved', PeerStep>> => ({
  moved: async (body) => {
    letMove(io, moving.parse(body).through);
    return true;
  },
});

interface Owner {
  readonly address: string;
  readonly process: string;
}

/** What the page says in the address of its line. One of an older page says nothing, and is served where it came to. */
function socketsTasting({ url = '' }: IncomingMessage): TastingId | undefined {
  if (!url.startsWith('/socket.io/')) return undefined;
  const asked = new URLSearchParams(url.slice(url.indexOf('?') + 1)).get('tasting') ?? '';
  return namePattern.test(asked) ? tastingId(asked) : undefined;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return '';
  }
}
