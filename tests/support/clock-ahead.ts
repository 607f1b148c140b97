import { epochMs } from '../../core/units.ts';
import type { Clock } from '../../server/clock.ts';

/** `notBefore` for a clock of a test: the same hands, put forward once and for all where they stand behind. */
export function clockAhead(clock: Clock, moment: number): Clock {
  const by = moment - clock.now();
  if (by <= 0) return clock;
  const ahead: Clock = {
    now: () => epochMs(clock.now() + by),
    at: (when, run) => clock.at(epochMs(when - by), run),
    notBefore: (another) => clockAhead(ahead, another),
  };
  return ahead;
}
