import type { ErrorRequestHandler, RequestHandler } from 'express';
import type { CallSettings } from '../access/call-servers.ts';
import type { GuessThrottle } from '../access/guess-throttle.ts';
import type { Keyring } from '../access/keys.ts';
import type { HouseOpenings } from '../access/open-houses.ts';
import type { Chance } from '../chance.ts';
import type { Clock } from '../clock.ts';
import type { Conductors } from '../live/conductors.ts';
import type { Log } from '../log.ts';
import type { Metrics, Standing } from '../ops/metrics.ts';
import type { Store } from '../store/store.ts';

/** What the routes are made of. */
export interface HttpParts {
  readonly store: Store;
  readonly keyring: Keyring;
  readonly conductors: Conductors;
  readonly guesses: GuessThrottle;
  readonly chance: Chance;
  readonly clock: Clock;
  readonly log: Log;
  readonly metrics: Metrics;
  readonly standing: () => Standing;
  /** Origins of other addresses whose pages may write here. */
  readonly origins: readonly string[];
  /** Addresses at which guests reach this server, best first. */
  readonly guestOrigins: () => readonly string[];
  readonly callServers: CallSettings;
  /** Folder with the built pages, `guest` and `host`. */
  readonly pages: string;
  readonly secure: boolean;
  /** Whether a stranger may make a house of their own. */
  readonly openHouses: boolean;
  readonly openings: HouseOpenings;
  /** Among several processes: passes on what is another's. */
  readonly passOn?: readonly RequestHandler[];
  /** The same: what was refused because the evening went to another meanwhile. */
  readonly wentMeanwhile?: ErrorRequestHandler;
  /** Whether whoever balances between processes may send devices here; `ending` is for good, while those who are here stay. */
  readonly ready: () => 'yes' | 'no' | 'ending';
}
