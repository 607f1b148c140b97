import type { Keyring } from '../access/keys.ts';
import { reasonOf } from '../guard.ts';
import type { Log } from '../log.ts';
import type { Conductors } from './conductors.ts';

/**
 * The key of a house is withdrawn beside what serves devices: who came in with it is let go at the next look. Nothing is asked
 * while no such key was ever shown here.
 */
export const createHouseWatch = (keyring: Keyring, conductors: Conductors, log: Log) => (): void => {
  const look = async (): Promise<void> => {
    if (await keyring.withdrawn()) conductors.dismissWithdrawn((hash) => keyring.stands(hash));
  };
  look().catch((error: unknown) => log.warn({ reason: reasonOf(error) }, 'houses could not be looked at'));
};
