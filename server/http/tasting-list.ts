import { z } from 'zod';
import { type HouseId, tastingId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import type { ListedHouse, ListedTasting, TastingPage } from '../../shared/wire/http.ts';
import type { TastingSearch, TastingSummary } from '../store/store.ts';
import type { HttpParts } from './parts.ts';

/** A few screens full. */
const pageSize = 20;

/** `after` names the last one of the page before by what the list is in order of, so that one deleted since is none the worse. */
export const searchQuery = z.strictObject({
  find: z.string().max(200).default(''),
  after: z
    .string()
    .regex(/^\d{1,15}\.[A-Za-z0-9_-]{1,40}$/)
    .transform((cursor) => {
      const [createdAt = '', tasting = ''] = cursor.split('.');
      return { createdAt: epochMs(Number(createdAt)), tasting: tastingId(tasting) };
    })
    .optional(),
});

/** The list of a house's evenings, page by page, from what the store keeps of each for it. */
export class TastingList {
  readonly #parts: Pick<HttpParts, 'store' | 'conductors'>;

  constructor(parts: Pick<HttpParts, 'store' | 'conductors'>) {
    this.#parts = parts;
  }

  async page({ house, find, after }: Omit<TastingSearch, 'most'>): Promise<TastingPage> {
    const { tastings } = this.#parts.store;
    // One more tells whether there is more.
    const found = await tastings.page({ house, find, after, most: pageSize + 1 });
    const shown = found.slice(0, pageSize);
    const last = found.length > pageSize ? shown.at(-1) : undefined;
    const first = find === '' && after === undefined ? this.#unreadable(house) : [];
    const named = new Set(first.map(({ tasting }) => tasting));
    const rest = shown.filter(({ tasting }) => !named.has(tasting)).map((row) => this.#listed(row));
    return {
      tastings: [...first, ...rest],
      next: last ? `${last.createdAt}.${last.tasting}` : null,
      // What of the file is broken may be another house's: whoever runs the server is told.
      ...(house === undefined ? {} : { house: await this.#houseOf(house) }),
      ...(house === undefined && this.#parts.store.damaged() ? { damaged: true } : {}),
    };
  }

  async #houseOf(house: HouseId): Promise<ListedHouse> {
    const found = await this.#parts.store.houses.find(house);
    return { name: found?.open === false ? found.name : null, volumeUnit: found?.ways.volumeUnit ?? null };
  }

  #unreadable(house: HouseId | undefined): ListedTasting[] {
    const { tastings } = this.#parts.store;
    const own = [...tastings.troubles().keys()].filter((tasting) => tastings.isOf(tasting, house));
    return own.slice(0, pageSize).flatMap((tasting) => {
      const row = tastings.summary(tasting);
      return row === undefined ? [] : [this.#listed(row)];
    });
  }

  #listed(row: TastingSummary): ListedTasting {
    const { store, conductors } = this.#parts;
    const trouble = store.tastings.troubles().get(row.tasting) ?? conductors.troubleOf(row.tasting) ?? null;
    const altered = [...(store.tastings.altered().get(row.tasting) ?? [])];
    return { ...row, trouble, ...(altered.length > 0 ? { altered } : {}) };
  }
}
