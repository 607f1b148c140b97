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
  /** After the last thing that happened to a tasting, or after the evening it is planned for. */
  readonly keepFor: DurationMs;
}

const lookEvery = durationMs(6 * 3600 * 1000);

/** Deletes tastings that nobody has touched for long, with every note in them. Answers with what ends it. */
export function startRetention(parts: RetentionParts): Cancel {
  const { store, conductors, clock, log, keepFor } = parts;
  let next: Cancel = () => undefined;

  const overdue = async (): Promise<TastingId[]> =>
    [...(await store.tastings.list()), ...(await store.tastings.unreadable())]
      .filter((row) => later(lastTouched(store, row), keepFor) <= clock.now())
      .map(({ tasting }) => tasting);

  const sweep = async (): Promise<void> => {
    for (const tasting of await overdue()) {
      await conductors.remove(tasting);
      log.info({ tasting }, 'deleted, for its time was over');
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
