import { createHash, timingSafeEqual } from 'node:crypto';
import type { HouseId, TastingId } from '../../core/ids.ts';
import type { Clock } from '../clock.ts';
import type { KeyRow, Store } from '../store/store.ts';
import { passOf } from './join-code.ts';

/** Keys are random and long, so that a plain fast hash is enough; only the hash is stored or compared. */
export const hashOf = (key: string): string => createHash('sha256').update(key, 'utf8').digest('hex');

/** Whose key it is. A house's key opens every tasting of that house as a host would, and is blind to all others. */
export type Identity = HouseIdentity | KeyRow;
interface HouseIdentity {
  readonly role: 'house';
  readonly hash: string;
  /** Absent: the first house. */
  readonly house?: HouseId;
  /** Whether there is such a tasting in it. */
  readonly opens: (tasting: TastingId) => boolean;
}

const longestKey = 128;

/** Tells who holds a key. Looked up by hash, so that the time it takes says nothing about how close a guess was. */
export class Keyring {
  readonly #store: Store;
  readonly #clock: Clock;
  readonly #house: Buffer;
  readonly #houseKey: string;
  /** Other houses whose keys have been shown here, by the hashes of these. */
  readonly #others = new Map<string, HouseId>();

  constructor(store: Store, clock: Clock, houseKey: string) {
    this.#store = store;
    this.#clock = clock;
    this.#houseKey = houseKey;
    this.#house = Buffer.from(hashOf(houseKey), 'hex');
  }

  identify(key: string): Identity | undefined {
    if (key.length === 0 || key.length > longestKey) return undefined;
    const hash = hashOf(key);
    if (timingSafeEqual(Buffer.from(hash, 'hex'), this.#house)) return this.#asHouse(hash);
    const other = this.#others.get(hash);
    return other === undefined ? this.#valid(hash) : this.#asHouse(hash, other);
  }

  /**
   * To be awaited before `identify` wherever somebody comes in: what opens nothing here may be the key of another house, which
   * the store is asked for each time, so that a key that was withdrawn opens nothing from then on.
   * @returns what `identify` would
   */
  async learn(key: unknown): Promise<Identity | undefined> {
    if (typeof key !== 'string' || key.length === 0 || key.length > longestKey) return undefined;
    const hash = hashOf(key);
    if (timingSafeEqual(Buffer.from(hash, 'hex'), this.#house)) return this.#asHouse(hash);
    const own = this.#valid(hash);
    if (own !== undefined) return own;
    const found = await this.#store.houses.ofKey(hash);
    if (found === undefined) this.#others.delete(hash);
    else this.#others.set(hash, found.house);
    return found && this.#asHouse(hash, found.house);
  }

  /** Whether the key of a house that was shown here does not stand any more; from here on it opens nothing. */
  async withdrawn(): Promise<boolean> {
    const shown = [...this.#others.keys()];
    if (shown.length === 0) return false;
    const standing = new Set((await this.#store.houses.list()).map(({ keyHash }) => keyHash));
    const gone = shown.filter((hash) => !standing.has(hash));
    for (const hash of gone) this.#others.delete(hash);
    return gone.length > 0;
  }

  /** Whether the key with this hash still opens what it did: keys are withdrawn and grow old while devices are connected. */
  stands(hash: string): boolean {
    return (
      timingSafeEqual(Buffer.from(hash, 'hex'), this.#house) ||
      this.#others.has(hash) ||
      this.#valid(hash) !== undefined
    );
  }

  #asHouse(hash: string, house?: HouseId): HouseIdentity {
    const opens = (tasting: TastingId) => this.#store.tastings.isOf(tasting, house);
    return { role: 'house', hash, opens, ...(house && { house }) };
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
  identity?.role === 'house'
    ? identity.opens(tasting)
    : identity?.role === 'host' && identity.tasting === tasting;
