import { type TastingId, tastingId } from '../../core/ids.ts';
import { type DeviceStorage, keepJson, keptJson } from '../../shared/page/device-storage.ts';
import type { KeyLink } from './key-link.ts';

/** The keys that this device holds. */
export interface HostKeys {
  /** The key to show for a tasting: its own, or the one of the house, which opens them all. */
  keyFor(tasting: TastingId): string | undefined;
  /** The key of a helper, which opens none of the host's pages. */
  helperKeyFor(tasting: TastingId): string | undefined;
  house(): string | undefined;
  /** Tastings that this device has a key of their own for. */
  tastings(): readonly TastingId[];
  /** Answers whether the key will still be here when the page is opened again. */
  keep(link: KeyLink): boolean;
}

interface Keys {
  readonly house?: string;
  readonly tastings: Readonly<Record<string, string>>;
  readonly helpers: Readonly<Record<string, string>>;
}

const place = 'quietpour.host-keys';

/** Keys in the browser's storage, or only in this page's memory where storage is refused. */
export function openHostKeys(storage?: () => DeviceStorage): HostKeys {
  let keys = read(storage);
  return {
    keyFor: (tasting) => (Object.hasOwn(keys.tastings, tasting) ? keys.tastings[tasting] : keys.house),
    helperKeyFor: (tasting) => (Object.hasOwn(keys.helpers, tasting) ? keys.helpers[tasting] : undefined),
    house: () => keys.house,
    tastings: () => Object.keys(keys.tastings).map(tastingId),
    keep(link) {
      keys = withKey(keys, link);
      return keepJson(place, keys, storage);
    },
  };
}

function withKey(keys: Keys, link: KeyLink): Keys {
  switch (link.to) {
    case 'house':
      return { ...keys, house: link.key };
    case 'tasting':
      return { ...keys, tastings: { ...keys.tastings, [link.tasting]: link.key } };
    case 'helper':
      return { ...keys, helpers: { ...keys.helpers, [link.tasting]: link.key } };
    default:
      return link satisfies never;
  }
}

function read(storage?: () => DeviceStorage): Keys {
  const saved = keptJson(place, storage);
  if (typeof saved !== 'object' || saved === null) return { tastings: {}, helpers: {} };
  const house = 'house' in saved && typeof saved.house === 'string' ? { house: saved.house } : {};
  return {
    ...house,
    tastings: keysIn('tastings' in saved ? saved.tastings : undefined),
    helpers: keysIn('helpers' in saved ? saved.helpers : undefined),
  };
}

const keysIn = (saved: unknown): Record<string, string> =>
  typeof saved === 'object' && saved !== null
    ? (Object.fromEntries(Object.entries(saved).filter(([, key]) => typeof key === 'string')) as Record<
        string,
        string
      >)
    : {};
