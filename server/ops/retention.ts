import type { TastingId } from '../../core/ids.ts';
import { type DurationMs, durationMs, type EpochMs, epochMs, later } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';
import type { Log } from '../log.ts';
import type { Store, TastingRow, UnreadableTasting } from '../store/store.ts';

export interface RetentionParts {
  readonly store: Store;
  readonly conductors: { remove(tasting: TastingId): Promise<unknown> };
  readonly clock: Clock;
  readonly log: Log;
  /** Whether this evening is conducted here, so that all of it can be read; absent: every one is. */
  readonly mine?: (tasting: TastingId) => Promise<boolean>;
  /** After the last thing that happened to a tasting, or after the evening it is planned for. */
  readonly keepFor: DurationMs;
}

const lookEvery = durationMs(6 * 3600 * 1000);

/** Deletes tastings that nobody has touched for long, with every note in them. Answers with what ends it. */
export function startRetention(parts: RetentionParts): Cancel {
  const { store, conductors, clock, log, keepFor, mine } = parts;
  let next: Cancel = () => undefined;

  const isOver = (row: TastingRow | UnreadableTasting): boolean =>
    later(lastTouched(store, row), keepFor) <= clock.now();
  const sweep = async (): Promise<void> => {
    for (const row of [...(await store.tastings.list()), ...(await store.tastings.unreadable())]) {
      // Its log is read only where it may be over, and is conducted here.
      if (!isOver(row) || (mine !== undefined && !((await mine(row.tasting)) && isOver(row)))) continue;
      await conductors.remove(row.tasting);
      log.info({ tasting: row.tasting }, 'deleted, for its time was over');
    }
  };
  const plan = (at: EpochMs): void => {
    next = clock.at(at, () => {
      plan(later(clock.now(), lookEvery));
      sweep().catch((error: unknown) => {
        log.error({ reason: error instanceof Error ? error.name : 'unknown' }, 'not everything was deleted');
      });
    });
  };
  plan(clock.now());
  return () => next();
}

function lastTouched(store: Store, row: TastingRow | UnreadableTasting): EpochMs {
  const { tasting, createdAt } = row;
  const planned = Date.parse('plan' in row ? (row.plan.startsAt ?? '') : '');
  return latest([createdAt, lastEvent(store, tasting), Number.isNaN(planned) ? 0 : planned]);
}

/** Also of a log of which not everything can be read. */
const lastEvent = (store: Store, tasting: TastingId): number => store.sessions.lastAt(tasting);

const latest = (moments: readonly number[]): EpochMs => epochMs(Math.max(...moments));
