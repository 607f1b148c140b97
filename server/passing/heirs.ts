import { setTimeout as wait } from 'node:timers/promises';
import type { Request, RequestHandler } from 'express';
import { z } from 'zod';
import { type TastingId, tastingId } from '../../core/ids.ts';
import type { Peers } from '../access/peers.ts';
import { reasonOf } from '../guard.ts';
import type { Conductors } from '../live/conductors.ts';
import type { Log } from '../log.ts';
import type { Cluster } from '../store/postgres/postgres.ts';

export interface HeirsParts {
  readonly cluster: Pick<Cluster, 'name' | 'draining'>;
  readonly peers: Peers;
  readonly conductors: Pick<Conductors, 'conducted' | 'handOver'>;
  readonly log: Log;
}

type Step = 'prepare' | 'take';
const asked = z.object({ tasting: z.string().max(40), from: z.string().max(40) });
/** Evenings that change hands at once: each is read whole by its heir. */
const atOnce = 8;
/** Ms after which an heir that does not answer is no heir. */
const patience = 2000;

/**
 * When this process ends, each evening that it conducts goes to another while its devices look on: the heir reads it first,
 * then nothing runs here while one update makes the heir its owner, and its devices come to the heir at once.
 */
export class Heirs {
  readonly #parts: HeirsParts;

  constructor(parts: HeirsParts) {
    this.#parts = parts;
  }

  /** What one process asks of another before it ends; nobody else is let in here. */
  readonly route: RequestHandler = async (request, response, next) => {
    const [, first, step] = request.path.split('/');
    if (first !== 'peers') return next();
    // What another process was asked by somebody, and passes on, is not its own word.
    const own = this.#parts.peers.passedBy(request) && request.headers['x-forwarded-for'] === undefined;
    if (!own || request.method !== 'POST') return void response.status(404).end();
    const done = await this.#step(step, request).catch(() => false);
    response.status(done ? 204 : 409).end();
  };

  async #step(step: string | undefined, request: Request): Promise<boolean> {
    const { draining } = this.#parts.cluster;
    const { tasting, from } = asked.parse(request.body);
    if (step === 'prepare') return draining.prepare(tastingId(tasting));
    return step === 'take' && draining.takeFrom(from, tastingId(tasting));
  }

  /** Resolves when all are in other hands, or nobody was there to have them. @param seenWithin ms until no new devices come */
  async handOver(seenWithin: number): Promise<void> {
    const { conductors, cluster, log } = this.#parts;
    await wait(seenWithin);
    cluster.draining.drain();
    const waiting = [...conductors.conducted];
    const one = async (): Promise<void> => {
      for (let tasting = waiting.pop(); tasting !== undefined; tasting = waiting.pop())
        await this.#give(tasting).catch((error: unknown) => {
          log.warn({ tasting, reason: reasonOf(error) }, 'an evening found no heir');
        });
    };
    await Promise.all(Array.from({ length: atOnce }, one));
  }

  async #give(tasting: TastingId): Promise<void> {
    const { cluster, conductors } = this.#parts;
    for (const { address } of await cluster.draining.others()) {
      if (!(await this.#ask(address, 'prepare', tasting))) continue;
      const given = await conductors.handOver(tasting, async () => {
        if (!(await this.#ask(address, 'take', tasting))) return false;
        cluster.draining.gaveAway(tasting);
        return true;
      });
      if (given) return;
    }
  }

  async #ask(address: string, step: Step, tasting: TastingId): Promise<boolean> {
    const { peers, cluster } = this.#parts;
    try {
      const answer = await fetch(`http://${address}/api/peers/${step}`, {
        method: 'POST',
        headers: { ...peers.own, 'Content-Type': 'application/json' },
        body: JSON.stringify({ tasting, from: cluster.name }),
        signal: AbortSignal.timeout(patience),
      });
      return answer.status === 204;
    } catch {
      return false;
    }
  }
}
