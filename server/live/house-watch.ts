import type { Keyring } from '../access/keys.ts';
import { reasonOf } from '../guard.ts';
import type { Log } from '../log.ts';
import type { Conductors } from './conductors.ts';

/** In ms. */
const lookEvery = 1000;

/**
 * The key of a house is withdrawn beside the server, where several processes share a database: who came in with it is let go
 * within a second. Nothing is asked while no such key was ever shown here. Answers with what ends it.
 */
export function watchHouses(keyring: Keyring, conductors: Conductors, log: Log): () => void {
  const look = async (): Promise<void> => {
    if (await keyring.withdrawn()) conductors.dismissWithdrawn((hash) => keyring.stands(hash));
  };
  const timer = setInterval(() => {
    look().catch((error: unknown) => log.warn({ reason: reasonOf(error) }, 'houses could not be looked at'));
  }, lookEvery);
  timer.unref();
  return () => clearInterval(timer);
}
