import { type TastingId, tastingId } from '../../core/ids.ts';

/** What opens a seat on any device. The key is the seat: who has it, has the notes. */
export interface SeatPass {
  readonly tasting: TastingId;
  readonly key: string;
}

const path = '/seat';
const fragment = /^#?([A-Za-z0-9_-]{1,40})\.([A-Za-z0-9_-]{22,64})$/;

/** The pass stands in the fragment, which browsers send to no server. */
export const seatLink = (origin: string, { tasting, key }: SeatPass): string =>
  `${origin}${path}#${tasting}.${key}`;

/** Undefined for anything that is not a whole seat link, such as one that a messenger has cut. */
export function seatPassFrom(hash: string): SeatPass | undefined {
  const found = fragment.exec(hash.trim());
  const [, tasting, key] = found ?? [];
  return tasting === undefined || key === undefined ? undefined : { tasting: tastingId(tasting), key };
}

/** Where a guest's page begins, by its address. */
export type Entrance =
  | { readonly at: 'door' }
  | { readonly at: 'invitation'; readonly code: string }
  | { readonly at: 'seat-link'; readonly pass: SeatPass }
  /** A seat link without a whole key in it. */
  | { readonly at: 'broken-link' }
  | { readonly at: 'own-seat' };

export function entranceAt(location: Pick<Location, 'pathname' | 'hash'>): Entrance {
  const parts = location.pathname.split('/').filter((part) => part !== '');
  if (parts[0] === 'j' && parts[1] !== undefined) {
    const code = tidyCode(decoded(parts[1]));
    return code === '' ? { at: 'door' } : { at: 'invitation', code };
  }
  if (parts[0] !== 'seat') return { at: 'door' };
  if (location.hash.length <= 1) return { at: 'own-seat' };
  const pass = seatPassFrom(location.hash);
  return pass === undefined ? { at: 'broken-link' } : { at: 'seat-link', pass };
}

/** Case, spaces and dashes do not matter; which letters look alike is the server's business. */
export const tidyCode = (typed: string): string => typed.replace(/[\s-]/g, '').toUpperCase().slice(0, 40);

/** The shortest there are; a server that is reached from elsewhere has longer ones. */
export const codeLength = 6;

/** In threes, as it is read out and shown. */
export const codeGroups = (code: string): readonly string[] => code.match(/.{1,3}/g) ?? [];

/** A link carries more than the code that is typed, and begins with it. */
export const sameCode = (one: string, other: string): boolean =>
  one !== '' && other !== '' && (one.startsWith(other) || other.startsWith(one));

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
