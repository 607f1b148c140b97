import { type TastingId, tastingId } from '../../core/ids.ts';
import { type DeviceStorage, keepJson, keptJson } from '../../shared/page/device-storage.ts';
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

interface Keys {
  readonly house?: string;
  readonly tastings: Readonly<Record<string, string>>;
}

const place = 'quietpour.host-keys';

/** Keys in the browser's storage, or only in this page's memory where storage is refused. */
export function openHostKeys(storage?: () => DeviceStorage): HostKeys {
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
      return keepJson(place, keys, storage);
    },
  };
}

function read(storage?: () => DeviceStorage): Keys {
  const saved = keptJson(place, storage);
  if (typeof saved !== 'object' || saved === null) return { tastings: {} };
  const house = 'house' in saved && typeof saved.house === 'string' ? { house: saved.house } : {};
  const tastings =
    'tastings' in saved && typeof saved.tastings === 'object' && saved.tastings !== null
      ? Object.entries(saved.tastings).filter(([, key]) => typeof key === 'string')
      : [];
  return { ...house, tastings: Object.fromEntries(tastings) as Record<string, string> };
}
