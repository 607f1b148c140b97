import type { TastingId } from '../../core/ids.ts';
import { durationMs } from '../../core/units.ts';
import type { Clock } from '../clock.ts';
import type { Store } from '../store/store.ts';
import { Allowances } from './allowances.ts';

/** What a house may keep that a stranger opens by themselves. */
export const openHouseLimits = { evenings: 5, seats: 20, bytes: 20_000_000 } as const;

/** One in which nothing was planned for so long is gone, so that those who only look leave nothing behind. */
export const emptyHouseKept = durationMs(7 * 24 * 3600 * 1000);

/**
 * A household or a class that looks at once, then one after another; over the whole server a few thousand a day at most,
 * whatever addresses they come from.
 */
const openings = {
  address: { perSecond: 1 / 1200, burst: 10 },
  everywhere: { perSecond: 1 / 30, burst: 100 },
} as const;

/** How many houses strangers may open, by address and over the whole server. */
export class HouseOpenings {
  readonly #fromAddress: Allowances;
  readonly #fromAll: Allowances;
  #tell: (address: string) => void = () => undefined;

  constructor(clock: Clock) {
    this.#fromAddress = new Allowances(clock, openings.address);
    this.#fromAll = new Allowances(clock, openings.everywhere);
  }

  /** Counts one more, unless it is one too many. */
  take(address: string): boolean {
    if (!this.#fromAddress.take(address) || !this.#fromAll.take('')) return false;
    this.#tell(address);
    return true;
  }

  /** @param tell where else it counts as well */
  onCounted(tell: (address: string) => void): void {
    this.#tell = tell;
  }

  /** Counts one that another process of the same cluster has opened. */
  countElsewhere(address: string): void {
    this.#fromAddress.take(address);
    this.#fromAll.take('');
  }
}

/**
 * Whether a stranger has made the house of this evening by themselves. That they come in there says nothing good of their
 * address.
 */
export async function isStrangers(
  { tastings, houses }: Pick<Store, 'tastings' | 'houses'>,
  tasting: TastingId,
): Promise<boolean> {
  try {
    const house = tastings.houseOf(tasting);
    return house !== undefined && (await houses.find(house))?.open !== false;
  } catch {
    return true;
  }
}
