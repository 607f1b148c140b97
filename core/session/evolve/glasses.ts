import type { Pour } from '../../tasting.ts';
import type { Arrangement, SessionEvent } from '../event.ts';
import { indexOfCue } from '../position.ts';
import { cueNow, type UnderWay } from '../state.ts';

/** How events change the glasses of an evening under way. What the room has behind it stays. */

type Change<Type extends SessionEvent['type']> = Extract<SessionEvent, { type: Type }>;

export const withPlan = (session: UnderWay, changes: Partial<UnderWay['plan']>): UnderWay => ({
  ...session,
  plan: { ...session.plan, ...changes },
  planChanges: session.planChanges + 1,
});

/** [P22] Its id stays, and with it its cues, its code, its number and every note. */
export function bottleChanged(session: UnderWay, { pour, bottle }: Change<'BottleChanged'>): UnderWay {
  const changed = ({ id, drink }: Pour): Pour => ({ ...bottle, id, drink });
  return withPlan(session, {
    pours: session.plan.pours.map((each) => (each.id === pour ? changed(each) : each)),
  });
}

export function pourAdded(session: UnderWay, { pour, code, arranged: to }: Change<'PourAdded'>): UnderWay {
  const { plan } = session;
  const codes = code === null ? plan.codes : { ...plan.codes, [pour.id]: code };
  return arranged({ ...session, plan: { ...plan, pours: [...plan.pours, pour], codes } }, to);
}

/** [P23, P24] */
export function arranged(session: UnderWay, to: Arrangement): UnderWay {
  const { pours, trials } = session.plan;
  const flights = new Map(to.trials.map(({ trial, flight }) => [trial, flight]));
  const here = indexOfCue(to.cues, cueNow(session).id);
  const changed = withPlan(session, {
    pours: to.order.flatMap((id) => pours.find((pour) => pour.id === id) ?? []),
    numbers: [...to.numbers],
    flightSizes: [...to.flightSizes],
    servingOrders: to.servingOrders,
    trials: trials.map((trial) => ({ ...trial, flight: flights.get(trial.id) ?? trial.flight })),
  });
  return { ...changed, cues: to.cues, at: here < 0 ? session.at : here };
}
