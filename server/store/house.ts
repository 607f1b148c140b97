import type { HouseId, TastingId } from '../../core/ids.ts';
import { houseId } from '../../core/ids.ts';
import { type Plan, planSchema } from '../../core/tasting.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';

/**
 * One host's or one organisation's part of a server. The first house, which every server has, is no row: its key is the
 * server's own, it has no limits, and the evenings that name no house are its.
 */
export interface House {
  readonly house: HouseId;
  readonly name: string;
  /** SHA-256 of the key, hex. */
  readonly keyHash: string;
  readonly createdAt: EpochMs;
  /** Whether a stranger has opened it by themselves. */
  readonly open: boolean;
  readonly limits: HouseLimits;
  readonly ways: HouseWays;
}

/** Null: none. */
interface HouseLimits {
  /** How many it may keep. */
  readonly evenings: number | null;
  /** At one table. */
  readonly seats: number | null;
  /** Of all that is stored of its evenings. */
  readonly bytes: number | null;
}

/** Null: as the device has it. */
interface HouseWays {
  /** In which its link opens; a BCP 47 tag. */
  readonly language: string | null;
  /** With which its new evenings begin. */
  readonly volumeUnit: Plan['volumeUnit'] | null;
}

interface HouseUsage {
  readonly evenings: number;
  readonly bytes: number;
}

/** The houses besides the first. */
export interface HouseShelf {
  /** Rejects with `StoreFailure` where the id or the key is another house's. */
  add(house: House): Promise<void>;
  /** Oldest first. */
  list(): Promise<House[]>;
  find(house: HouseId): Promise<House | undefined>;
  ofKey(keyHash: string): Promise<House | undefined>;
  /** False when there is no such house; the same of `limit`. From here on the key of before opens nothing. */
  changeKey(house: HouseId, keyHash: string): Promise<boolean>;
  limit(house: HouseId, limits: HouseLimits): Promise<boolean>;
  /** Those that strangers made before then, and in which nothing is planned, are gone. */
  sweep(madeBefore: EpochMs): Promise<void>;
  usage(house: HouseId): Promise<HouseUsage>;
  /** All of its evenings, whether or not they can be read. */
  evenings(house: HouseId): Promise<TastingId[]>;
  /** Those of these evenings that are not in the store any more. */
  gone(evenings: readonly TastingId[]): Promise<TastingId[]>;
  /**
   * With every evening of it, and all that is in them. False when there is no such house; rejects with `StoreFailure` when
   * anything of it is still there afterwards.
   */
  remove(house: HouseId): Promise<boolean>;
}

/** As it stands in the table. */
export interface HouseRow {
  readonly house: string;
  readonly name: string;
  readonly key_hash: string;
  readonly created_at: number;
  readonly open: number;
  readonly language: string | null;
  readonly volume_unit: string | null;
  readonly most_evenings: number | null;
  readonly most_seats: number | null;
  readonly most_bytes: number | null;
}

export const houseColumns =
  'house, name, key_hash, created_at, open, language, volume_unit, most_evenings, most_seats, most_bytes';

/** In the order of `houseColumns`. */
export const valuesOf = ({ house, name, keyHash, createdAt, open, limits, ways }: House) => [
  ...[house, name, keyHash, createdAt, Number(open), ways.language, ways.volumeUnit],
  ...limitsOf(limits),
];
export const limitsOf = ({ evenings, seats, bytes }: HouseLimits) => [evenings, seats, bytes];

export const houseFromRow = (row: HouseRow): House => ({
  house: houseId(row.house),
  name: row.name,
  keyHash: row.key_hash,
  createdAt: epochMs(row.created_at),
  open: row.open === 1,
  limits: { evenings: row.most_evenings, seats: row.most_seats, bytes: row.most_bytes },
  ways: {
    language: row.language,
    volumeUnit: planSchema.shape.volumeUnit.safeParse(row.volume_unit ?? '').data ?? null,
  },
});

/** @param before the parameter for the moment, as the database writes it */
export const emptyOpenHouses = (before: string): string =>
  `open = 1 AND created_at < ${before} AND NOT EXISTS (SELECT 1 FROM tastings t WHERE t.house = houses.house)`;

/** What a house is charged for, in the SQL that both databases speak; the lengths are read without what they are of. */
const charged = [
  ['tastings', ['plan']],
  ['events', ['event']],
  ['answers', ['answer']],
  ['documents', ['body']],
  ['surveys', ['answers']],
  ['sealed_notes', ['value', 'sealed_value']],
  ['photos', ['jpeg']],
] as const;

/** @param house the parameter for its id, as the database writes it */
export const bytesOfHouse = (house: string): string =>
  charged
    .flatMap(([table, columns]) =>
      columns.map(
        (column) =>
          `(SELECT coalesce(sum(octet_length(${column})), 0) FROM ${table} WHERE tasting IN (SELECT tasting FROM tastings WHERE house = ${house}))`,
      ),
    )
    .join(' + ');
