import type { HouseId, TastingId } from '../../core/ids.ts';
import { carriedOver, type Habits, learn, livedSoFar, noHabits } from '../../core/running-order/forecast.ts';
import type { HostCommand } from '../../core/session/command.ts';
import { evolveAll } from '../../core/session/evolve.ts';
import { type Finished, type Session, unopened } from '../../core/session/state.ts';
import type { Pacing, Plan } from '../../core/tasting.ts';
import { SetAside } from '../store/set-aside.ts';
import type { Store } from '../store/store.ts';

/** How many of the latest evenings teach the next one; older ones say little of today's host. */
const eveningsRemembered = 5;
/** Plans that were never opened are passed over, but not without end. */
const plansLookedAt = 25;

/** What the finished evenings of a house (absent: the first) taught about how long a room takes, the latest counting most. */
export async function habitsOfHouse(store: Evenings, house?: HouseId): Promise<Habits> {
  return (await latestEvenings(store, house, eveningsRemembered))
    .toReversed()
    .reduce((habits, { cues, timeline }) => carriedOver(learn(habits, livedSoFar(cues, timeline))), noHabits);
}

/**
 * [P19] The pace with which an evening begins: as planned, but where that is by hand and the last evening ended with its
 * steps running by themselves, so does this one begin.
 */
export async function openingPace(
  { pacing }: Pick<Plan, 'pacing'>,
  store: Evenings,
  house?: HouseId,
): Promise<Pacing> {
  if (pacing.by !== 'host') return pacing;
  const [last] = await latestEvenings(store, house, 1);
  return last?.pacing.by === 'steps' ? last.pacing : pacing;
}

/** The doors of a plan, with what the evenings of its house before have left for it. `draw`: a secret that nobody else is told. */
export const openingDoors = async (
  plan: Plan | undefined,
  store: Evenings,
  draw: string,
  house?: HouseId,
): Promise<Extract<HostCommand, { type: 'OpenDoors' }> | undefined> =>
  plan && {
    type: 'OpenDoors',
    plan: { ...plan, pacing: await openingPace(plan, store, house) },
    habits: await habitsOfHouse(store, house),
    draw,
  };

type Evenings = Pick<Store, 'tastings' | 'sessions'>;

async function latestEvenings(
  { tastings, sessions }: Evenings,
  house: HouseId | undefined,
  most: number,
): Promise<Finished[]> {
  const finished: Finished[] = [];
  for (const { tasting } of await tastings.latest(house, plansLookedAt)) {
    const session = await sessionOf(sessions, tasting);
    if (session?.status === 'finished') finished.push(session);
    if (finished.length === most) break;
  }
  return finished;
}

/** The plan as it is now: from the opening on the session has one of its own. */
export const planOf = (
  session: Session,
  { store, tasting }: { readonly store: Pick<Store, 'tastings'>; readonly tasting: TastingId },
): Plan | undefined => (session.status === 'unopened' ? store.tastings.find(tasting)?.plan : session.plan);

/** An evening that cannot be read teaches nothing; that it cannot is told where it is asked for. */
async function sessionOf(sessions: Store['sessions'], tasting: TastingId) {
  try {
    return evolveAll(unopened, await sessions.readAnywhere(tasting));
  } catch (error) {
    if (error instanceof SetAside) return undefined;
    throw error;
  }
}
