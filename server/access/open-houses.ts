import type { TastingId } from '../../core/ids.ts';
import { durationMs } from '../../core/units.ts';
import type { Store } from '../store/store.ts';

/** What a house may keep that a stranger opens by themselves. */
export const openHouseLimits = { evenings: 5, seats: 20, bytes: 20_000_000 } as const;

/** One in which nothing was planned for so long is gone, so that those who only look leave nothing behind. */
export const emptyHouseKept = durationMs(7 * 24 * 3600 * 1000);

/**
 * A household or a class that looks at once, then one after another; over the whole server a few thousand a day at most,
 * whatever addresses they come from.
 */
export const openings = {
  address: { perSecond: 1 / 1200, burst: 10 },
  everywhere: { perSecond: 1 / 30, burst: 100 },
} as const;

/**
 * Whether a stranger has made the house of this evening by themselves. That they come in there says nothing good of their
 * address.
 */
export async function isStrangers(
  { tastings, houses }: Pick<Store, 'tastings' | 'houses'>,
  tasting: TastingId,
): Promise<boolean> {
  try {
    const house = tastings.find(tasting)?.house;
    return house !== undefined && (await houses.find(house))?.open !== false;
  } catch {
    return true;
  }
}
