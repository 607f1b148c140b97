import { guarded, reasonOf } from '../guard.ts';
import type { Log } from '../log.ts';
import type { Conductors } from './conductors.ts';
import { showLife } from './flat-broadcast.ts';
import {
  followersOf,
  followersOfBefore,
  followersOfWholes,
  helpersOf,
  hostsOf,
  type LiveServer,
} from './rooms.ts';

/** Ms: together less than the 2 s of silence after which a page asks whether its line lives. */
const quietFor = 1500;
export const lookEvery = 250;

/**
 * While a cue runs, devices that follow the room hear something at least every 1.75 s, three bytes where there is nothing to
 * say: one whose line dies notices within 4 s, and none has to ask. Whoever waits at the door hears nothing of it.
 * To be called every `lookEvery` ms.
 */
export function createLifeSigns(
  io: LiveServer,
  conductors: Pick<Conductors, 'runningNow'>,
  log: Log,
): () => void {
  return guarded(
    () => {
      for (const tasting of conductors.runningNow()) {
        for (const room of [followersOf, followersOfWholes, followersOfBefore, hostsOf, helpersOf])
          showLife(io, room(tasting), quietFor);
      }
    },
    (error) => log.error({ reason: reasonOf(error) }, 'life was not shown'),
  );
}
