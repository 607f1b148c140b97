import { createHash, timingSafeEqual } from 'node:crypto';
import type { TastingId } from '../../core/ids.ts';
import type { Clock } from '../clock.ts';
import type { KeyRow, Store } from '../store/store.ts';
import { passOf } from './join-code.ts';

/** Keys are random and long, so that a plain fast hash is enough; only the hash is stored or compared. */
export const hashOf = (key: string): string => createHash('sha256').update(key, 'utf8').digest('hex');

/** Whose key it is. The house key opens every tasting of this server as a host would. */
export type Identity = { readonly role: 'house'; readonly hash: string } | KeyRow;

const longestKey = 128;

/** Tells who holds a key. Looked up by hash, so that the time it takes says nothing about how close a guess was. */
export class Keyring {
  readonly #store: Store;
  readonly #clock: Clock;
  readonly #house: Buffer;
  readonly #houseKey: string;

  constructor(store: Store, clock: Clock, houseKey: string) {
    this.#store = store;
    this.#clock = clock;
    this.#houseKey = houseKey;
    this.#house = Buffer.from(hashOf(houseKey), 'hex');
  }

  identify(key: string): Identity | undefined {
    if (key.length === 0 || key.length > longestKey) return undefined;
    const hash = hashOf(key);
    if (timingSafeEqual(Buffer.from(hash, 'hex'), this.#house)) return { role: 'house', hash };
    return this.#valid(hash);
  }

  /** Whether the key with this hash still opens what it did: keys are withdrawn and grow old while devices are connected. */
  stands(hash: string): boolean {
    return timingSafeEqual(Buffer.from(hash, 'hex'), this.#house) || this.#valid(hash) !== undefined;
  }

  /** What a link to the invitation carries behind the join code. */
  passOf(tasting: TastingId): string {
    return passOf(tasting, this.#houseKey);
  }

  passOpens(tasting: TastingId, pass: string): boolean {
    return timingSafeEqual(
      Buffer.from(hashOf(pass), 'hex'),
      Buffer.from(hashOf(this.passOf(tasting)), 'hex'),
    );
  }

  #valid(hash: string): KeyRow | undefined {
    const row = this.#store.keys.find(hash);
    if (row === undefined) return undefined;
    return row.expiresAt !== null && row.expiresAt <= this.#clock.now() ? undefined : row;
  }
}

export const mayHost = (identity: Identity | undefined, tasting: TastingId): boolean =>
  identity?.role === 'house' || (identity?.role === 'host' && identity.tasting === tasting);
