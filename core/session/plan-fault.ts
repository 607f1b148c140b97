import { compile } from '../running-order/compile.ts';
import type { Plan } from '../tasting.ts';
import { durationMs, epochMs } from '../units.ts';
import type { Command, Moment } from './command.ts';
import { decide } from './decide.ts';
import { evolveAll } from './evolve.ts';
import { cueNow, type Session, unopened } from './state.ts';

/** Why an evening could not be conducted although each field of its plan is in order. */
export type PlanFault = 'doubled-id' | 'no-farewell';

const anyMoment: Moment = {
  now: epochMs(0),
  lead: durationMs(0),
  hostPresent: true,
  present: new Set(),
};

/**
 * Looks for a name that two pours, trials or cues share, and then plays the evening by the rules of the session, Next by
 * Next: it must come to its farewell. A plan without pours is not opened at all, and so has no fault.
 */
export function planFault(plan: Plan): PlanFault | undefined {
  const cues = compile(plan);
  const names = [...plan.pours, ...plan.trials].map(({ id }) => id);
  if (doubled(names) || doubled(cues.map(({ id }) => id))) return 'doubled-id';
  if (plan.pours.length === 0) return undefined;
  let session: Session = after(unopened, { by: 'host', ask: { type: 'OpenDoors', plan } });
  for (let step = 0; step < cues.length; step += 1) {
    if (session.status !== 'under-way') return 'no-farewell';
    const cue = cueNow(session);
    if (cue.kind === 'farewell') return undefined;
    session = after(session, { by: 'host', ask: { type: 'Advance', from: cue.id } });
  }
  return 'no-farewell';
}

const doubled = (names: readonly string[]): boolean => new Set(names).size < names.length;

function after(session: Session, command: Command): Session {
  const decision = decide(session, command, anyMoment);
  return decision.ok ? evolveAll(session, decision.events) : session;
}
