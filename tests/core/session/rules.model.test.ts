import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cueId, pourId, type SeatId, seatId } from '../../../core/ids.ts';
import type { Command } from '../../../core/session/command.ts';
import { deadlinesOf } from '../../../core/session/deadlines.ts';
import { decide } from '../../../core/session/decide.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { playable } from '../../../core/session/position.ts';
import { cueNow, type Session, unopened } from '../../../core/session/state.ts';
import { hostView, runningOrderView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { type Plan, planSchema } from '../../../core/tasting.ts';
import { durationMs, epochMs, seconds } from '../../../core/units.ts';
import { planOf, pourNames } from '../../support/plans.ts';
import { strictHost, strictRunningOrder, strictSeat, strictStage } from '../../support/strict-views.ts';

/** Random evenings: whatever is asked in whatever order, the rules hold at every step. */

const seats = ['ada', 'ben', 'cleo'].map(seatId);
const aSeat = fc.constantFrom(...seats);
const aPour = fc.constantFrom(...pourNames.map(pourId), pourId('nothing'));
const pours = fc.uniqueArray(aPour, { minLength: 1, maxLength: 4 });

/** A command that may or may not fit: the cue it names is the current one most of the time. */
type Draft = (session: Session) => Command;
const currentCue = (session: Session) =>
  session.status === 'under-way' ? cueNow(session).id : cueId('gathering');
const host =
  (ask: Extract<Command, { by: 'host' }>['ask']): Draft =>
  () => ({ by: 'host', ask });

const drafts = (plan: Plan): fc.Arbitrary<Draft> =>
  fc.oneof(
    {
      weight: 8,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'host',
        ask: { type: 'Advance', from: currentCue(now) },
      })),
    },
    { weight: 2, arbitrary: fc.constant(host({ type: 'Advance', from: cueId('birch/first/nose') })) },
    {
      weight: 2,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'host',
        ask: { type: 'GoBack', from: currentCue(now) },
      })),
    },
    {
      weight: 3,
      arbitrary: fc.nat({ max: 200 }).map<Draft>((at) => (now) => {
        const cues = now.status === 'under-way' ? now.cues : [];
        return {
          by: 'host',
          ask: { type: 'JumpTo', cue: cues[at % (cues.length || 1)]?.id ?? cueId('nowhere') },
        };
      }),
    },
    {
      weight: 6,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'clock',
        ask: { type: 'ExpireCue', cue: currentCue(now) },
      })),
    },
    {
      weight: 3,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'clock',
        ask: { type: 'WeighRoom', cue: currentCue(now) },
      })),
    },
    fc.constantFrom(
      host({ type: 'OpenDoors', plan }),
      host({ type: 'Hold' }),
      host({ type: 'Resume' }),
      host({ type: 'ClearReminder' }),
      host({ type: 'Finish' }),
      host({ type: 'Reopen' }),
      host({ type: 'UndoFit' }),
      host({ type: 'DropClosingPass' }),
      host({ type: 'RestoreClosingPass' }),
      host({ type: 'ShortenDiscussions' }),
      host({ type: 'RestoreDiscussions' }),
      host({ type: 'WishEnd', endsAt: null }),
    ),
    fc
      .tuple(fc.constantFrom('FitTo', 'WishEnd'), fc.integer({ min: -3600, max: 14_400 }))
      .map(([type, after]) => host({ type, endsAt: epochMs(1_800_000_000_000 + after * 1000) })),
    fc.integer({ min: 5, max: 900 }).map((s) => host({ type: 'GiveTime', seconds: seconds(s) })),
    fc.integer({ min: 30, max: 900 }).map((s) => host({ type: 'CallBreak', seconds: seconds(s) })),
    fc.constantFrom('water', 'spit', 'quiet').map((kind) => host({ type: 'Remind', kind })),
    pours.map((list) => host({ type: 'OpenDiscussion', pours: list })),
    pours.map((list) => host({ type: 'CloseDiscussion', pours: list })),
    pours.map((list) => host({ type: 'Reveal', pours: list })),
    aPour.map((pour) => host({ type: 'DropPour', pour })),
    aPour.map((pour) => host({ type: 'RestorePour', pour })),
    fc
      .constantFrom({ by: 'host' } as const, { by: 'clock' } as const, { by: 'room', share: 0.6 } as const)
      .map((pacing) => host({ type: 'ChoosePacing', pacing })),
    fc.constantFrom('open', 'ask', 'closed').map((doors) => host({ type: 'SetDoors', doors })),
    aSeat.map((seat) => host({ type: 'AdmitSeat', seat })),
    aSeat.map((seat) => host({ type: 'RemoveSeat', seat })),
    aSeat.map((seat) => host({ type: 'RestoreSeat', seat })),
    aSeat.map((seat) => host({ type: 'AnswerSeat', seat })),
    aSeat.map<Draft>((seat) => () => ({
      by: 'newcomer',
      ask: { type: 'TakeSeat', seat, name: seat, leftHanded: false, remote: false },
    })),
    fc
      .tuple(aSeat, fc.constantFrom('ready', 'more-time', 'needs-host', null))
      .map<Draft>(([seat, signal]) => (now) => ({
        by: 'guest',
        seat,
        ask: { type: 'GiveSignal', signal, cue: currentCue(now) },
      })),
    aSeat.map<Draft>((seat) => () => ({ by: 'guest', seat, ask: { type: 'LeaveTable' } })),
    fc.tuple(aSeat, aPour).map<Draft>(([seat, pour]) => () => ({
      by: 'guest',
      seat,
      ask: { type: 'CatchUp', pour },
    })),
  );

interface StepTaken {
  readonly draft: Draft;
  readonly wait: number;
  readonly hostPresent: boolean;
  readonly present: readonly SeatId[];
}

const steps = (plan: Plan): fc.Arbitrary<StepTaken[]> =>
  fc.array(
    fc.record({
      draft: drafts(plan),
      wait: fc.oneof(fc.nat({ max: 5_000 }), fc.nat({ max: 900_000 })),
      hostPresent: fc.boolean(),
      present: fc.subarray(seats),
    }),
    { minLength: 1, maxLength: 80, size: 'max' },
  );

const plans = fc
  .record({
    pours: fc.integer({ min: 1, max: 9 }),
    level: fc.constantFrom('newcomers', 'regulars', 'devotees'),
    blind: fc.boolean(),
    discussion: fc.constantFrom('each-pour', 'each-flight', 'at-the-end'),
    ranking: fc.constantFrom('none', 'each-flight', 'at-the-end'),
  })
  .map(({ pours: count, ...more }) => planOf(count, more));

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
          const opening: StepTaken = {
            draft: host({ type: 'OpenDoors', plan }),
            wait: 0,
            hostPresent: true,
            present: [],
          };
          for (const step of [opening, ...taken]) {
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
