import { keepJson, keepText, keptJson } from '../../shared/page/device-storage.ts';
import { newSeatKey } from '../../shared/seats/new-id.ts';

const shelf = 'quietpour.screen';

interface KeptKey {
  readonly code: string;
  readonly key: string;
}

/** The key with which this screen asks for an evening: the same after a power cut, so that the host lets it in once. */
export function keyFor(code: string): string {
  const kept = keptJson(shelf);
  if (isKeptKey(kept) && kept.code === code) return kept.key;
  const key = newSeatKey();
  // A screen that keeps nothing asks anew after a reload.
  keepJson(shelf, { code, key } satisfies KeptKey);
  return key;
}

/** After a no, or once the screens were switched off, the next ask is a new one. */
export const forgetKey = (): void => void keepText(shelf, null);

const isKeptKey = (value: unknown): value is KeptKey =>
  typeof value === 'object' &&
  value !== null &&
  'code' in value &&
  'key' in value &&
  typeof value.code === 'string' &&
  typeof value.key === 'string';
