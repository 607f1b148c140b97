import { commandId, pourId, type SeatId, seatId, type TastingId, tastingId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import type { SqliteStore } from '../../../server/store/sqlite.ts';
import type { Chances } from '../chances.ts';
import { canary } from '../secrets/canary.ts';

const fields = ['look', 'nose', 'palate', 'finish', 'thoughts'] as const;
export const tastings = ['harvest', 'winter', 'spring'].map(tastingId);
export const guests = 16;
const pours = ['one', 'two', 'three'].map(pourId);

/** Who has asked to be forgotten, by evening and seat. */
export type Forgotten = Map<string, { readonly tasting: TastingId; readonly seat: SeatId }>;

/** A word in some guest's notebook, over another one or as the first. */
export async function write(
  store: SqliteStore,
  word: number,
  chances: Chances,
  revisions: Map<string, number>,
  forgotten: ReadonlyMap<string, unknown>,
): Promise<void> {
  const tasting = chances.anyOf(tastings) ?? tastingId('harvest');
  const seat = seatId(`seat-${chances.below(guests)}`);
  // Who has asked to be forgotten has no key to write with.
  if (forgotten.has(`${tasting} ${seat}`)) return;
  const pour = chances.anyOf(pours) ?? pourId('one');
  const field = chances.anyOf(fields) ?? 'nose';
  const place = `${tasting} ${seat} ${pour} ${field}`;
  const revision = (revisions.get(place) ?? 0) + 1;
  revisions.set(place, revision);
  const value = `${canary(word).text} ${'and more '.repeat(chances.below(40))}`;
  const savedAt = epochMs(word);
  const entry = { pour, field, value, revision, savedAt, ...(revision > 1 ? { sealedValue: value } : {}) };
  const answer = { ok: true, revision, value, savedAt } as const;
  const answered = { command: commandId(`word-${String(word).padStart(6, '0')}`), answer };
  await store.notebooks.save({ tasting, seat, entry, answered });
}

/** Some guest of the evenings that stay, never the first one: what nobody forgot must come back. */
export async function forget(store: SqliteStore, chances: Chances, forgotten: Forgotten): Promise<void> {
  const tasting = chances.anyOf(tastings.slice(1)) ?? tastingId('winter');
  const seat = seatId(`seat-${1 + chances.below(guests - 1)}`);
  await store.notebooks.forget(tasting, seat);
  forgotten.set(`${tasting} ${seat}`, { tasting, seat });
}
