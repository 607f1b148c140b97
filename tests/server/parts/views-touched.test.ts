import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { decide } from '../../../core/session/decide.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { type Finished, type Session, type UnderWay, unopened } from '../../../core/session/state.ts';
import { runningOrderView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import type { Plan } from '../../../core/tasting.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { runningOrderTouched, seatsTouched } from '../../../server/live/views-touched.ts';
import { planOf } from '../../support/plans.ts';
import { opening, plans, seats, steps } from '../../support/random-evenings.ts';

/** Three glasses blind, each seat in an order of its own, and two that are told apart. */
const ownOrders: Plan = planOf(3, {
  blind: true,
  ownOrders: true,
  servingOrders: [{ rows: [0, 1, 2].map((by) => turned(['ash', 'birch', 'cedar'].map(pourId), by)) }],
});
const withTrial: Plan = {
  ...planOf(3, { blind: true }),
  trials: [
    {
      id: pourId('juniper'),
      flight: 0,
      a: pourId('ash'),
      b: pourId('birch'),
      codes: { a: ['417', '952'], b: ['638', '264'] },
      orders: ['AAB', 'ABA', 'BAA', 'BBA', 'BAB', 'ABB'],
    },
  ],
};

function turned<Item>(items: readonly Item[], by: number): Item[] {
  return [...items.slice(by), ...items.slice(0, by)];
}

const wire = (view: object | undefined): string => JSON.stringify(view) ?? 'none';
const opened = (session: Session): UnderWay | Finished | undefined =>
  session.status === 'unopened' ? undefined : session;

describe('views that nothing touched', () => {
  it('are what they were, whatever has been asked', () => {
    let [passedOver, lookedAt] = [0, 0];
    fc.assert(
      fc.property(
        fc
          .oneof(plans, fc.constantFrom(ownOrders, withTrial))
          .chain((plan) => fc.tuple(fc.constant(plan), steps(plan))),
        ([plan, taken]) => {
          let session: Session = unopened;
          let now = 1_800_000_000_000;
          for (const step of [opening(plan), ...taken]) {
            now += step.wait;
            const decision = decide(session, step.draft(session), {
              now: epochMs(now),
              lead: durationMs(120),
              hostPresent: step.hostPresent,
              present: new Set(step.present),
            });
            const events: readonly SessionEvent[] = decision.ok ? decision.events : [];
            const before = opened(session);
            session = evolveAll(session, events);
            const after = opened(session);
            if (after === undefined || events.length === 0) continue;
            const touched = new Set(seatsTouched(before, after, events, () => seats));
            for (const seat of seats.filter((each) => !touched.has(each))) {
              passedOver += 1;
              expect(wire(seatView(after, seat, 0))).toBe(wire(before && seatView(before, seat, 0)));
            }
            lookedAt += touched.size;
            if (!runningOrderTouched(before, after)) {
              expect(wire(runningOrderView(after, 0))).toBe(wire(before && runningOrderView(before, 0)));
            }
          }
        },
      ),
      { numRuns: 150 },
    );
    // That nothing is ever looked at, or everything always, would pass for less work or more than there is.
    expect(lookedAt).toBeGreaterThan(0);
    expect(passedOver).toBeGreaterThan(lookedAt);
  });
});
