import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { glassNumbers } from '../../../core/running-order/glass-numbers.ts';
import type { Command } from '../../../core/session/command.ts';
import { deadlinesOf } from '../../../core/session/deadlines.ts';
import { decide } from '../../../core/session/decide.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { playable } from '../../../core/session/position.ts';
import { cueNow, type Session, unopened } from '../../../core/session/state.ts';
import { hostView, runningOrderView } from '../../../core/session/views/host.ts';
import { hostSeats } from '../../../core/session/views/host-seats.ts';
import { screenView } from '../../../core/session/views/screen.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { planSchema } from '../../../core/tasting.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { stageChangeBetween, withStageChange } from '../../../shared/wire/stage-change.ts';
import { planOf } from '../../support/plans.ts';
import { opening, plans, type StepTaken, seats, steps } from '../../support/random-evenings.ts';
import {
  strictHost,
  strictRunningOrder,
  strictScreen,
  strictSeat,
  strictStage,
} from '../../support/strict-views.ts';

const overTheWire = <Value>(value: Value): Value =>
  value === undefined ? value : JSON.parse(JSON.stringify(value));

/** Random evenings: whatever is asked in whatever order, the rules hold at every step. */

function checkStep(
  before: Session,
  command: Command,
  step: StepTaken,
  after: Session,
  events: readonly SessionEvent[],
) {
  if (after.status !== 'under-way') return;
  const cue = cueNow(after);
  // The pointer is always on something that can be played, or on what the host jumped to by hand.
  expect(after.at).toBeGreaterThanOrEqual(0);
  expect(playable(after).length).toBeGreaterThan(0);
  expect(after.dropped.length).toBeLessThan(after.plan.pours.length);
  if (before.status === 'under-way' && command.by === 'clock' && events.length > 0) {
    expect(cueNow(before).gate, '[P2]').toBe(false);
    expect(before.clock.kind, '[P4]').toBe('running');
    expect(before.pacing.by !== 'host' || !step.hostPresent, '[P3, P8]').toBe(true);
  }
  if (before.status === 'under-way' && events.every(({ type }) => type !== 'BreakCalled')) {
    const numbers = glassNumbers(after.plan);
    for (const [pour, number] of glassNumbers(before.plan)) expect(numbers.get(pour), '[P23]').toBe(number);
    expect(new Set(numbers.values()).size, '[P23]').toBe(after.plan.pours.length);
    const behind = before.cues.slice(0, before.at + 1).map(({ id }) => id);
    expect(
      after.cues.slice(0, before.at + 1).map(({ id }) => id),
      '[P24]',
    ).toEqual(behind);
    expect(new Set(after.cues.map(({ id }) => id)).size, '[P24]').toBe(after.cues.length);
  }
  if (before.status === 'under-way') {
    // What is kept of seats that have not changed is what would be shown of them anew.
    const known = { session: before, seats: hostSeats(before) };
    expect(hostSeats(after, known), 'seats').toEqual(hostSeats(after));
    // What a follower makes of what is new is what it would have been told as a whole.
    const [from, to] = [stageView(before, 1), stageView(after, 2)];
    const change = overTheWire(stageChangeBetween(from, to)) ?? [0, epochMs(0)];
    expect(withStageChange(overTheWire(from), change), 'stage').toEqual(overTheWire(to));
  }
  const entered = events.filter((event) => event.type === 'CueEntered');
  if (command.by === 'host' && command.ask.type === 'Advance')
    expect(entered.length, '[P1]').toBeLessThanOrEqual(1);
  if (cue.gate || after.clock.kind === 'held') expect(deadlinesOf(after), '[P2, P4]').toEqual([]);
  if (entered.length > 0) {
    expect(
      Object.values(after.signals).every((signal) => signal === 'needs-host'),
      '[S2]',
    ).toBe(true);
    if (cue.kind === 'step')
      expect(
        Object.values(after.discussions).some((each) => each.open),
        '[Q5]',
      ).toBe(false);
  }
  for (const [pour, discussion] of Object.entries(after.discussions)) {
    expect(after.reached, '[Q6]').toContain(pour);
    const sealed = before.status === 'under-way' ? before.discussions[pourId(pour)]?.sealedAt : undefined;
    if (sealed !== undefined) expect(discussion.sealedAt, '[Q3]').toBe(sealed);
  }
}

/** [F1, Q4] What the wire to guests may not hold. */
function checkStage(session: Session) {
  if (session.status === 'unopened') return;
  const stage = stageView(session, 1);
  strictStage.parse(stage);
  strictHost.parse(hostView(session, 1));
  strictScreen.parse(screenView(session));
  expect(new Set(session.revealed).size, '[P21]').toBe(session.revealed.length);
  strictRunningOrder.parse(runningOrderView(session, 1));
  for (const seat of seats) strictSeat.optional().parse(seatView(session, seat, 1));
  const wire = JSON.stringify(stage);
  for (const pour of session.plan.pours) {
    const mayBeNamed =
      session.reached.includes(pour.id) && (!session.plan.blind || session.revealed.includes(pour.id));
    if (!mayBeNamed) expect(wire, '[F1, Q4]').not.toContain(pour.name);
  }
}

describe('random evenings', () => {
  it('keep every rule, and a replay of the log is where the evening stands', () => {
    fc.assert(
      fc.property(
        plans.chain((plan) => fc.tuple(fc.constant(plan), steps(plan))),
        ([plan, taken]) => {
          let session: Session = unopened;
          let now = 1_800_000_000_000;
          const log: SessionEvent[] = [];
          for (const step of [opening(plan), ...taken]) {
            now += step.wait;
            const moment = {
              now: epochMs(now),
              lead: durationMs(120),
              hostPresent: step.hostPresent,
              present: new Set(step.present),
            };
            const command = step.draft(session);
            const decision = decide(session, command, moment);
            const events = decision.ok ? decision.events : [];
            if (decision.ok) expect(events.length, 'what is done leaves a trace').toBeGreaterThan(0);
            const after = evolveAll(session, events);
            checkStep(session, command, step, after, events);
            checkStage(after);
            log.push(...events);
            session = after;
          }
          expect(evolveAll(unopened, JSON.parse(JSON.stringify(log)) as SessionEvent[])).toEqual(session);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('read the same plan from the schema as they were given', () => {
    const plan = planOf(9, { blind: true });
    expect(planSchema.parse(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
  });
});
