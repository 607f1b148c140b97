import type { HouseId, TastingId } from '../../core/ids.ts';
import type { Store } from '../store/store.ts';
import { Refused } from './answers.ts';

/** What a house may keep. The first one, and what guests write in any, is never refused for it. */
export class HouseLimits {
  readonly #store: Pick<Store, 'houses' | 'tastings'>;
  readonly #last = new Map<HouseId, Promise<unknown>>();

  constructor(store: Pick<Store, 'houses' | 'tastings'>) {
    this.#store = store;
  }

  /** Throws `Refused` unless the house has room for one evening more. Those of one house come one after another. */
  async oneMore<Result>(house: HouseId | undefined, make: () => Promise<Result>): Promise<Result> {
    if (house === undefined) return make();
    const before = this.#last.get(house) ?? Promise.resolve();
    const made = before.then(async () => {
      await this.#mustHaveRoom(house, 1);
      return make();
    });
    const settled = made.catch(() => undefined);
    this.#last.set(house, settled);
    void settled.then(() => this.#last.get(house) === settled && this.#last.delete(house));
    return made;
  }

  /** Throws `Refused` when the house of this tasting is full. */
  async mustHaveRoom(tasting: TastingId): Promise<void> {
    const house = this.#store.tastings.find(tasting)?.house;
    if (house !== undefined) await this.#mustHaveRoom(house, 0);
  }

  /** How many may sit at one of its tables; undefined: as many as the server allows. */
  async seats(house: HouseId | undefined): Promise<number | undefined> {
    if (house === undefined) return undefined;
    return (await this.#store.houses.find(house))?.limits.seats ?? undefined;
  }

  async #mustHaveRoom(house: HouseId, evenings: number): Promise<void> {
    const found = await this.#store.houses.find(house);
    // Deleted a moment ago.
    if (found === undefined) throw new Refused('wrong-key');
    const { limits } = found;
    if (limits.evenings === null && limits.bytes === null) return;
    const used = await this.#store.houses.usage(house);
    if (limits.evenings !== null && used.evenings + evenings > limits.evenings)
      throw new Refused('too-many-evenings');
    if (limits.bytes !== null && used.bytes >= limits.bytes) throw new Refused('house-full');
  }
}
