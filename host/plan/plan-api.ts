import type { TastingId } from '../../core/ids.ts';
import type { Plan } from '../../core/tasting.ts';
import type { CreatedTasting, CrowdView, SavePlan, StoredPlan } from '../../shared/wire/http.ts';
import type { RefusalCode } from '../../shared/wire/protocol.ts';

/** `no-answer` is a server that is not there. */
export type PlanFailure = RefusalCode | 'no-answer';
export type PlanAnswer<Body> =
  | { readonly ok: true; readonly body: Body }
  | { readonly ok: false; readonly code: PlanFailure };

/** What the plan page asks of the server. Never throws: a failure is an answer too. */
export interface PlanApi {
  plan(tasting: TastingId): Promise<PlanAnswer<StoredPlan>>;
  savePlan(tasting: TastingId, save: SavePlan): Promise<PlanAnswer<{ readonly revision: number }>>;
  crowd(tasting: TastingId): Promise<PlanAnswer<CrowdView>>;
  createTasting(plan: Plan): Promise<PlanAnswer<CreatedTasting>>;
}
