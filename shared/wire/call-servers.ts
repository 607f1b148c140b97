import type { EpochMs } from '../../core/units.ts';

/**
 * How far a call of this server reaches. `network`: devices of one network only. `public`: devices also learn the address under
 * which others reach them, which most homes let through. `relay`: where nothing else passes, a relay passes it on.
 */
export type CallReach = 'network' | 'public' | 'relay';

/** For one device that may join a call: what its browser takes as `iceServers`, good until `expiresAt`. */
export interface CallServers {
  readonly reach: CallReach;
  readonly iceServers: readonly {
    readonly urls: readonly string[];
    readonly username?: string;
    readonly credential?: string;
  }[];
  readonly expiresAt: EpochMs;
}
