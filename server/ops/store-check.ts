import { type EpochMs, epochMs } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';
import type { Log } from '../log.ts';
import type { Store } from '../store/store.ts';

interface StoreCheckParts {
  readonly store: Pick<Store, 'check'>;
  readonly clock: Clock;
  readonly log: Log;
}

/** Reads the whole store now and each night at four, and says in the log what is damaged. Answers with what ends it. */
export function startStoreCheck({ store, clock, log }: StoreCheckParts): Cancel {
  let next: Cancel = () => undefined;
  const look = (): void => {
    next = clock.at(nextNight(clock.now()), look);
    const damage = store.check();
    if (damage.length > 0)
      log.error({ damage: damage.slice(0, 5) }, 'the store is damaged: put a backup in its place');
  };
  look();
  return () => next();
}

/** Four in the morning where the server stands: nobody tastes then. */
function nextNight(now: EpochMs): EpochMs {
  const night = new Date(now);
  night.setHours(4, 0, 0, 0);
  if (night.getTime() <= now) night.setDate(night.getDate() + 1);
  return epochMs(night.getTime());
}
