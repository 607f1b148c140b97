import type { TastingId } from '../../core/ids.ts';
import { carriedOver, type Habits, learn, livedSoFar, noHabits } from '../../core/running-order/forecast.ts';
import { evolveAll } from '../../core/session/evolve.ts';
import { type Finished, unopened } from '../../core/session/state.ts';
import { SetAside } from '../store/set-aside.ts';
import type { Store } from '../store/store.ts';

/** How many of the latest evenings teach the next one; older ones say little of today's host. */
const eveningsRemembered = 5;
/** Plans that were never opened are passed over, but not without end. */
const plansLookedAt = 25;

/** What the finished evenings of this house taught about how long a room takes, the latest counting most. */
export function habitsOfHouse({ tastings, sessions }: Pick<Store, 'tastings' | 'sessions'>): Habits {
  const finished = tastings
    .list(plansLookedAt)
    .flatMap(({ tasting }) => finishedSession(sessions, tasting))
    .slice(0, eveningsRemembered);
  return finished
    .toReversed()
    .reduce((habits, { cues, timeline }) => carriedOver(learn(habits, livedSoFar(cues, timeline))), noHabits);
}

/** An evening that cannot be read teaches nothing; that it cannot is told where it is asked for. */
function finishedSession(sessions: Store['sessions'], tasting: TastingId): Finished[] {
  try {
    const session = evolveAll(unopened, sessions.read(tasting));
    return session.status === 'finished' ? [session] : [];
  } catch (error) {
    if (error instanceof SetAside) return [];
    throw error;
  }
}
