import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide } from '../../../core/session/decide.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { type Session, unopened } from '../../../core/session/state.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { evolve } from '../../support/evolve.ts';
import { opening, plans, steps } from '../../support/random-evenings.ts';

/** Writing to what is frozen throws. */
function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const each of Object.values(value)) frozen(each);
  }
  return value;
}

describe('a replay', () => {
  it('ends where the events led one by one, and changes nothing that it was given', () => {
    fc.assert(
      fc.property(
        plans.chain((plan) => fc.tuple(fc.constant(plan), steps(plan))),
        fc.nat({ max: 200 }),
        ([plan, taken], half) => {
          let session: Session = unopened;
          let now = 1_800_000_000_000;
          const log: SessionEvent[] = [];
          for (const step of [opening(plan), ...taken]) {
            now += step.wait;
            const decision = decide(frozen(session), step.draft(session), {
              now: epochMs(now),
              lead: durationMs(120),
              hostPresent: step.hostPresent,
              present: new Set(step.present),
            });
            for (const event of decision.ok ? decision.events : []) {
              log.push(frozen(event));
              session = evolve(frozen(session), event);
            }
          }
          expect(evolveAll(unopened, log)).toEqual(session);
          const midway = frozen(evolveAll(unopened, log.slice(0, half)));
          expect(evolveAll(midway, log.slice(half))).toEqual(session);
        },
      ),
      { numRuns: 60 },
    );
  });
});
