import { type TastingId, tastingId } from '../../core/ids.ts';
import type { KeyLink } from './key-link.ts';

/** The keys that this device holds. */
export interface HostKeys {
  /** The key to show for a tasting: its own, or the one of the house, which opens them all. */
  keyFor(tasting: TastingId): string | undefined;
  house(): string | undefined;
  /** Tastings that this device has a key of their own for. */
  tastings(): readonly TastingId[];
  /** Answers whether the key will still be here when the page is opened again. */
  keep(link: KeyLink): boolean;
}

/** The two calls of Web Storage that are used. */
export type KeyStorage = Pick<Storage, 'getItem' | 'setItem'>;

interface Keys {
  readonly house?: string;
  readonly tastings: Readonly<Record<string, string>>;
}

const place = 'quietpour.host-keys';

/** Reading the property itself throws where a browser refuses storage, so it is asked for only inside a try. */
const browserStorage = (): KeyStorage => localStorage;

/** Keys in the browser's storage, or only in this page's memory where storage is refused. */
export function openHostKeys(storage: () => KeyStorage = browserStorage): HostKeys {
  let keys = read(storage);
  return {
    keyFor: (tasting) => (Object.hasOwn(keys.tastings, tasting) ? keys.tastings[tasting] : keys.house),
    house: () => keys.house,
    tastings: () => Object.keys(keys.tastings).map(tastingId),
    keep(link) {
      keys =
        link.to === 'house'
          ? { ...keys, house: link.key }
          : { ...keys, tastings: { ...keys.tastings, [link.tasting]: link.key } };
      try {
        storage().setItem(place, JSON.stringify(keys));
        return true;
      } catch {
        return false;
      }
    },
  };
}

function read(storage: () => KeyStorage): Keys {
  try {
    const saved: unknown = JSON.parse(storage().getItem(place) ?? '{}');
    if (typeof saved !== 'object' || saved === null) return { tastings: {} };
    const house = 'house' in saved && typeof saved.house === 'string' ? { house: saved.house } : {};
    const tastings =
      'tastings' in saved && typeof saved.tastings === 'object' && saved.tastings !== null
        ? Object.entries(saved.tastings).filter(([, key]) => typeof key === 'string')
        : [];
    return { ...house, tastings: Object.fromEntries(tastings) as Record<string, string> };
  } catch {
    return { tastings: {} };
  }
}
