import { z } from 'zod';
import type { Peers } from '../access/peers.ts';
import type { Cluster } from '../store/postgres/cluster.ts';
import { askPeer, type PeerStep } from './peer-route.ts';

/** Ms between two tellings, and how many are told at most in one. */
const tellEvery = 500;
const mostTold = 2000;
const told = z.object({ addresses: z.array(z.string().max(100)).max(mostTold) });

/** What counts by address at every process. */
export interface CountedByAddress {
  /** @param tell of each that is counted here */
  onCounted(tell: (address: string) => void): void;
  countElsewhere(address: string): void;
}

/**
 * Wrong join codes and houses that strangers open count at every process, so that whoever tries at three of them gets no three
 * times as far. Each tells the others twice a second; what is told to nobody, because a process falls, is at most what it
 * counted in that time.
 */
export class SharedCounts {
  readonly #name: string;
  readonly #counted: CountedByAddress;
  readonly #others: () => Promise<readonly { readonly address: string }[]>;
  readonly #peers: Pick<Peers, 'own'>;
  readonly #timer: NodeJS.Timeout;
  #untold: string[] = [];

  /** @param name of the step under which processes tell each other of it */
  constructor(
    name: string,
    counted: CountedByAddress,
    draining: Pick<Cluster['draining'], 'others'>,
    peers: Pick<Peers, 'own'>,
  ) {
    this.#name = name;
    this.#counted = counted;
    this.#others = () => draining.others();
    this.#peers = peers;
    counted.onCounted((address) => {
      if (this.#untold.length < mostTold) this.#untold.push(address);
    });
    this.#timer = setInterval(() => void this.#tell().catch(() => undefined), tellEvery);
    this.#timer.unref();
  }

  get step(): Readonly<Record<string, PeerStep>> {
    return {
      [this.#name]: async (body) => {
        for (const address of told.parse(body).addresses) this.#counted.countElsewhere(address);
        return true;
      },
    };
  }

  close(): void {
    clearInterval(this.#timer);
  }

  async #tell(): Promise<void> {
    if (this.#untold.length === 0) return;
    const addresses = this.#untold;
    this.#untold = [];
    const others = await this.#others();
    await Promise.all(others.map(({ address }) => askPeer(this.#peers, address, this.#name, { addresses })));
  }
}
