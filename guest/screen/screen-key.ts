import { newSeatKey } from '../../shared/seats/new-id.ts';

const shelf = 'quietpour.screen';

interface KeptKey {
  readonly code: string;
  readonly key: string;
}

/** The key with which this screen asks for an evening: the same after a power cut, so that the host lets it in once. */
export function keyFor(code: string): string {
  const kept = readKept();
  if (kept?.code === code) return kept.key;
  const key = newSeatKey();
  write({ code, key });
  return key;
}

/** After a no, or once the screens were switched off, the next ask is a new one. */
export const forgetKey = (): void => write(null);

function readKept(): KeptKey | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(shelf) ?? 'null');
    return isKeptKey(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function write(kept: KeptKey | null): void {
  try {
    if (kept === null) localStorage.removeItem(shelf);
    else localStorage.setItem(shelf, JSON.stringify(kept));
  } catch {
    // A screen that keeps nothing asks anew after a reload.
  }
}

const isKeptKey = (value: unknown): value is KeptKey =>
  typeof value === 'object' &&
  value !== null &&
  'code' in value &&
  'key' in value &&
  typeof value.code === 'string' &&
  typeof value.key === 'string';
