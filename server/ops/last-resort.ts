import type { EventEmitter } from 'node:events';
import { reasonOf } from '../guard.ts';
import type { Log } from '../log.ts';

/**
 * For what no guard has caught, such as an error in a library's own timer: one evening's trouble must not end all others. What
 * was acknowledged is on disk and each evening is read from there, so that going on is safer for the rooms than stopping.
 */
export function goOnWhateverHappens(process: EventEmitter, log: Log): void {
  for (const event of ['uncaughtException', 'unhandledRejection'] as const)
    process.on(event, (error: unknown) =>
      log.error({ event, reason: reasonOf(error) }, 'a fault was caught last'),
    );
}
