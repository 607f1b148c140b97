import type { TastingId } from '../../../core/ids.ts';
import type { Claims, Whereabouts } from './claims.ts';

/** What a process among others is told of its sessions, and asks. */
export interface Cluster {
  /** This session here, if it is free or already here. Rejects with `StoreFailure` while the database does not answer. */
  claim(tasting: TastingId, refusing?: string): Promise<Whereabouts>;
  tastingOfKey(hash: string): Promise<TastingId | undefined>;
  tastingOfCode(code: string): Promise<TastingId | undefined>;
  /** Whether this session was here until a moment ago. */
  justLeft(tasting: TastingId): boolean;
  /** Whether this process may say anything of its sessions now. */
  holds(): boolean;
  /** Resolves once it may. */
  held(): Promise<void>;
  /**
   * Takes part from now on: `address` is where other processes reach this one (host:port). `lost` sessions are another's,
   * `taken` ones came here because their owner is gone, and `expired` is the lease for so long that another may have all.
   */
  join(address: string, on: ClusterEvents): Promise<void>;
  /** Of this process. */
  readonly name: string;
  readonly draining: Draining;
  /** The processes that own these sessions. */
  ownersOf(tastings: readonly TastingId[]): Promise<ReadonlyMap<TastingId, string>>;
  /** Wall clock of the database in ms, by the last round trips. */
  wall(): number;
  figures(): ClusterFigures;
}
/** How the sessions of a process that ends come to another. */
type Draining = Pick<Claims, 'drain' | 'others' | 'prepare' | 'takeFrom' | 'gaveAway'>;
export interface ClusterEvents {
  lost(tasting: TastingId): void;
  taken(tasting: TastingId): void;
  expired(): void;
  /** Whether it has to stay in memory here. */
  conducted(tasting: TastingId): boolean;
}
type ClusterFigures = Record<
  | 'renewals'
  | 'failedRenewals'
  | 'commits'
  | 'fenced'
  | 'readAgain'
  | 'taken'
  | 'lost'
  | 'released'
  | 'gaveAway'
  | 'takeMs'
  | 'owned'
  | 'offsetMs',
  number
>;
