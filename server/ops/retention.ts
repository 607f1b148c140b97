import type { TastingId } from '../../core/ids.ts';
import { type DurationMs, durationMs, type EpochMs, epochMs, later } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';
import type { Log } from '../log.ts';
import type { Store, TastingRow } from '../store/store.ts';

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

  const sweep = async (): Promise<void> => {
    for (const row of store.tastings.list()) {
      if (later(lastTouched(store, row), keepFor) > clock.now()) continue;
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

function lastTouched(store: Store, { tasting, plan, createdAt }: TastingRow): EpochMs {
  const planned = Date.parse(plan.startsAt ?? '');
  return latest([createdAt, lastEvent(store, tasting), Number.isNaN(planned) ? 0 : planned]);
}

function lastEvent(store: Store, tasting: TastingId): number {
  const last = store.sessions.read(tasting).findLast((event) => 'at' in event);
  return last !== undefined && 'at' in last ? last.at : 0;
}

const latest = (moments: readonly number[]): EpochMs => epochMs(Math.max(...moments));
