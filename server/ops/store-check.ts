import { scheduler } from 'node:timers/promises';
import { type EpochMs, epochMs } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';
import { reasonOf } from '../guard.ts';
import type { Log } from '../log.ts';
import { type Store, StoreFailure } from '../store/store.ts';

interface StoreCheckParts {
  readonly store: Pick<Store, 'check' | 'lookThrough' | 'tastings' | 'sessions'>;
  readonly clock: Clock;
  readonly log: Log;
}

/**
 * Reads the whole store now and each night at four, and says in the log what is damaged; then each evening by itself, so that
 * those which cannot be read, or are not as they were stored, are known before anybody opens them. Answers with what ends it.
 */
export function startStoreCheck({ store, clock, log }: StoreCheckParts): Cancel {
  let next: Cancel = () => undefined;
  let ended = false;
  /** One in each turn of the loop that serves everybody. */
  const readEvenings = async (): Promise<void> => {
    for (const tasting of await store.tastings.ids()) {
      if (ended) return;
      try {
        store.lookThrough(tasting);
        store.tastings.find(tasting);
        store.sessions.read(tasting);
      } catch (error) {
        const reason = error instanceof StoreFailure ? error.message : reasonOf(error);
        log.warn({ tasting, reason }, 'an evening cannot be read');
      }
      await scheduler.yield();
    }
    for (const [tasting, parts] of store.tastings.altered())
      log.warn({ tasting, parts: [...parts] }, 'something of an evening is not as it was stored');
  };
  const look = (): void => {
    next = clock.at(nextNight(clock.now()), look);
    const damage = store.check();
    if (damage.length > 0)
      log.error({ damage: damage.slice(0, 5) }, 'the store is damaged: put a backup in its place');
    readEvenings().catch((error: unknown) => {
      log.error({ reason: reasonOf(error) }, 'the evenings could not be looked through');
    });
  };
  look();
  return () => {
    ended = true;
    next();
  };
}

/** Four in the morning where the server stands: nobody tastes then. */
function nextNight(now: EpochMs): EpochMs {
  const night = new Date(now);
  night.setHours(4, 0, 0, 0);
  if (night.getTime() <= now) night.setDate(night.getDate() + 1);
  return epochMs(night.getTime());
}
