import { z } from 'zod';
import type { GuessThrottle } from '../access/guess-throttle.ts';
import type { Peers } from '../access/peers.ts';
import type { Cluster } from '../store/postgres/cluster.ts';
import { askPeer, type PeerStep } from './peer-route.ts';

/** Ms between two tellings, and how many wrong codes are told at most in one. */
const tellEvery = 500;
const mostTold = 2000;
const told = z.object({ addresses: z.array(z.string().max(100)).max(mostTold) });

/**
 * Wrong join codes count at every process, so that whoever guesses at three of them is not three times as quick. Each tells
 * the others twice a second; what is told to nobody, because a process falls, is at most what it counted in that time.
 */
export class SharedGuesses {
  readonly #guesses: Pick<GuessThrottle, 'failedElsewhere'>;
  readonly #others: () => Promise<readonly { readonly address: string }[]>;
  readonly #peers: Pick<Peers, 'own'>;
  readonly #timer: NodeJS.Timeout;
  #wrong: string[] = [];

  constructor(
    guesses: Pick<GuessThrottle, 'failedElsewhere' | 'onFailed'>,
    draining: Pick<Cluster['draining'], 'others'>,
    peers: Pick<Peers, 'own'>,
  ) {
    this.#guesses = guesses;
    this.#others = () => draining.others();
    this.#peers = peers;
    guesses.onFailed((address) => {
      if (this.#wrong.length < mostTold) this.#wrong.push(address);
    });
    this.#timer = setInterval(() => void this.#tell().catch(() => undefined), tellEvery);
    this.#timer.unref();
  }

  readonly step: PeerStep = async (body) => {
    for (const address of told.parse(body).addresses) this.#guesses.failedElsewhere(address);
    return true;
  };

  close(): void {
    clearInterval(this.#timer);
  }

  async #tell(): Promise<void> {
    if (this.#wrong.length === 0) return;
    const addresses = this.#wrong;
    this.#wrong = [];
    const others = await this.#others();
    await Promise.all(others.map(({ address }) => askPeer(this.#peers, address, 'guesses', { addresses })));
  }
}
