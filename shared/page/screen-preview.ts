import type { TastingId } from '../wire/views.ts';

/** What a screen needs to show an evening, and where guests come in. */
export interface Admission {
  readonly tasting: TastingId;
  readonly key: string;
  readonly code: string;
  readonly linkCode: string;
  readonly guestOrigins: readonly string[];
}

const sign = '#preview=';

/**
 * The fragment with which the host's app shows the screen's page as a small picture. It never travels, and the page takes
 * it out of its address at once.
 */
export const previewFragment = (admission: Admission): string =>
  sign + encodeURIComponent(JSON.stringify(admission));

/** Null for a page that is no picture of a host's. */
export function previewOf(fragment: string): Admission | null {
  if (!fragment.startsWith(sign)) return null;
  try {
    const read: unknown = JSON.parse(decodeURIComponent(fragment.slice(sign.length)));
    return isAdmission(read) ? read : null;
  } catch {
    return null;
  }
}

function isAdmission(read: unknown): read is Admission {
  if (typeof read !== 'object' || read === null) return false;
  const known: Readonly<Record<string, unknown>> = { ...read };
  const texts = ['tasting', 'key', 'code', 'linkCode'].every((name) => typeof known[name] === 'string');
  return (
    texts &&
    Array.isArray(known.guestOrigins) &&
    known.guestOrigins.every((origin) => typeof origin === 'string')
  );
}
