import type { TastingId } from '../../core/ids.ts';
import type { DurationMs } from '../../core/units.ts';
import type { Chance } from '../chance.ts';
import type { Clock } from '../clock.ts';
import type { OnFault } from '../guard.ts';
import type { Log } from '../log.ts';
import type { Store } from '../store/store.ts';
import type { CallServers } from './call-room.ts';
import type { Graces } from './presence.ts';
import type { LiveServer } from './rooms.ts';

export interface ConductorParts {
  readonly tasting: TastingId;
  readonly store: Store;
  readonly clock: Clock;
  readonly chance: Pick<Chance, 'key'>;
  readonly io: LiveServer;
  readonly log: Log;
  readonly graces: Graces;
  /** How many may sit at one table. */
  readonly seatLimit: number;
  /** Absent: none. */
  readonly callServers?: CallServers;
  /** How long before it is loaded here a session may have been watched by another process. */
  readonly watchedBefore?: DurationMs;
  /** Told of what goes wrong and is not the store's: the conductor is then ended. */
  readonly onFault: OnFault;
}
