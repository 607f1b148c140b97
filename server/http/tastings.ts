import { type Request, Router } from 'express';
import { z } from 'zod';
import { type HouseId, type TastingId, tastingId } from '../../core/ids.ts';
import { planFault } from '../../core/session/plan-fault.ts';
import { type Plan, planSchema } from '../../core/tasting.ts';
import type {
  CreatedTasting,
  ListedTasting,
  Opening,
  StoredPlan,
  TastingPage,
  TastingStage,
} from '../../shared/wire/http.ts';
import { codeLengths } from '../access/join-code.ts';
import { hashOf } from '../access/keys.ts';
import { habitsOfHouse, openingPace } from '../live/habits.ts';
import type { TastingRow } from '../store/store.ts';
import { Refused } from './answers.ts';
import { hostedTasting, identityOf, parsed } from './asking.ts';
import { HouseLimits } from './house-limits.ts';
import type { HttpParts } from './parts.ts';
import { searchQuery, TastingList } from './tasting-list.ts';

const planBody = z.strictObject({ plan: planSchema });
const savedPlanBody = z.strictObject({ plan: planSchema, base: z.number().int().min(0) });
/** What hosts do with tastings. */
export function tastingRoutes(parts: HttpParts): Router {
  const { store, keyring, conductors, chance, clock } = parts;
  const list = new TastingList(parts);
  const limits = new HouseLimits(store);
  const router = Router();

  const rowOf = (tasting: TastingId): TastingRow => {
    const row = store.tastings.find(tasting);
    if (row === undefined) throw new Refused('no-such-tasting');
    return row;
  };

  const stageOf = (tasting: TastingId): TastingStage => store.tastings.summary(tasting)?.stage ?? 'planned';
  /** Undefined: the first. */
  const houseOf = (request: Request): HouseId | undefined => {
    const identity = identityOf(request, keyring);
    if (identity.role !== 'house') throw new Refused('wrong-role');
    return identity.house;
  };
  /** Whether or not it can be read. */
  const known = (request: Request): TastingId => {
    const tasting = hostedTasting(request, keyring);
    if (!store.tastings.has(tasting)) throw new Refused('no-such-tasting');
    return tasting;
  };

  router.post('/tastings', async (request, response) => {
    const house = houseOf(request);
    const { plan } = parsed(planBody, request.body, 'plan-invalid');
    mustHaveAnEnd(plan);
    const tasting = tastingId(chance.id());
    const code = await freeCode(parts);
    const hostKey = chance.key();
    const row = { tasting, code, plan, revision: 1, createdAt: clock.now(), ...(house && { house }) };
    await limits.oneMore(house, () => store.tastings.create(row));
    await store.keys.add({ role: 'host', hash: hashOf(hostKey), tasting, expiresAt: null });
    response.status(201).json({ tasting, code, hostKey } satisfies CreatedTasting);
  });

  router.get('/tastings', async (request, response) => {
    const { tastings } = await list.page({ house: houseOf(request), find: '' });
    response.json(tastings satisfies readonly ListedTasting[]);
  });

  router.get('/tastings/list', async (request, response) => {
    const search = { house: houseOf(request), ...parsed(searchQuery, request.query) };
    response.json((await list.page(search)) satisfies TastingPage);
  });

  router.get('/tastings/:tasting/plan', (request, response) => {
    const tasting = hostedTasting(request, keyring);
    const { code, revision, ...row } = rowOf(tasting);
    // From the opening on the plan is what conducting has made of it.
    const plan = conductors.of(tasting)?.plan ?? row.plan;
    const stage = stageOf(tasting);
    const guestOrigins = parts.guestOrigins();
    const linkCode = code + keyring.passOf(tasting);
    response.json({ tasting, code, linkCode, plan, revision, stage, guestOrigins } satisfies StoredPlan);
  });

  router.get('/tastings/:tasting/opening', async (request, response) => {
    const { house } = rowOf(hostedTasting(request, keyring));
    const [habits, byHand] = [
      await habitsOfHouse(store, house),
      await openingPace({ pacing: { by: 'host' } }, store, house),
    ];
    response.json({ habits, byHand } satisfies Opening);
  });

  router.put('/tastings/:tasting/plan', async (request, response) => {
    const tasting = hostedTasting(request, keyring);
    rowOf(tasting);
    const { plan, base } = parsed(savedPlanBody, request.body, 'plan-invalid');
    mustHaveAnEnd(plan);
    // From the opening on the session has a plan of its own, which is changed by conducting.
    if (stageOf(tasting) !== 'planned') throw new Refused('already-open');
    const revision = await store.tastings.savePlan(tasting, plan, base);
    if (revision === undefined) throw new Refused('plan-changed');
    response.json({ revision });
  });

  router.delete('/tastings/:tasting', async (request, response) => {
    await conductors.remove(known(request));
    response.status(204).end();
  });

  router.get('/tastings/:tasting/as-it-lies', (request, response) => {
    const tasting = known(request);
    response.attachment(`${tasting}.json`).json(store.asItLies(tasting));
  });

  router.post('/tastings/:tasting/wake', (request, response) => {
    conductors.wake(known(request));
    response.status(204).end();
  });

  return router;
}

/** Throws `Refused`: what each field allows may still be an evening without an end. */
function mustHaveAnEnd(plan: Plan): void {
  const fault = planFault(plan);
  if (fault !== undefined) throw new Refused(fault);
}

async function freeCode({ chance, store, origins }: HttpParts): Promise<string> {
  const length = origins.length > 0 ? codeLengths.elsewhere : codeLengths.home;
  for (let tries = 0; tries < 20; tries += 1) {
    const code = chance.code(length);
    if ((await store.tastings.findByCode(code)) === undefined) return code;
  }
  throw new Error('No free join code was found.');
}
