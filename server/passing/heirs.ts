import { setTimeout as wait } from 'node:timers/promises';
import { z } from 'zod';
import { type TastingId, tastingId } from '../../core/ids.ts';
import type { Peers } from '../access/peers.ts';
import { reasonOf } from '../guard.ts';
import type { Conductors } from '../live/conductors.ts';
import type { Log } from '../log.ts';
import type { Cluster } from '../store/postgres/cluster.ts';
import { askPeer, type PeerStep } from './peer-route.ts';

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

/**
 * When this process ends, each evening that it conducts goes to another while its devices look on: the heir reads it first,
 * then nothing runs here while one update makes the heir its owner, and its devices come to the heir at once.
 */
export class Heirs {
  readonly #parts: HeirsParts;

  constructor(parts: HeirsParts) {
    this.#parts = parts;
  }

  /** What one process asks of another before it ends. */
  readonly steps: Readonly<Record<Step, PeerStep>> = {
    prepare: async (body) => this.#parts.cluster.draining.prepare(tastingId(asked.parse(body).tasting)),
    take: async (body) => {
      const { from, tasting } = asked.parse(body);
      return this.#parts.cluster.draining.takeFrom(from, tastingId(tasting));
    },
  };

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

  #ask(address: string, step: Step, tasting: TastingId): Promise<boolean> {
    const { peers, cluster } = this.#parts;
    return askPeer(peers, address, step, { tasting, from: cluster.name });
  }
}
