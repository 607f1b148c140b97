import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planFault } from '../../../core/session/plan-fault.ts';
import { planSchema } from '../../../core/tasting.ts';
import { planOf } from '../../support/plans.ts';

describe('a plan whose fields are all in order', () => {
  it('has a fault where two pours share a name, or a pour and a trial', () => {
    const [first, ...others] = planOf(3).pours;
    expect(planFault(planSchema.parse({ pours: [first, first, ...others] }))).toBe('doubled-id');
    const trial = {
      id: first?.id,
      flight: 0,
      a: 'ash',
      b: 'birch',
      codes: { a: ['111', '112'], b: ['113', '114'] },
      orders: ['AAB'],
    };
    expect(planFault(planSchema.parse({ pours: [first, ...others], trials: [trial] }))).toBe('doubled-id');
  });

  it('comes to its farewell, whatever else it says', () => {
    fc.assert(
      fc.property(
        fc.record({
          pours: fc.integer({ min: 0, max: 9 }),
          level: fc.constantFrom('newcomers', 'regulars', 'devotees'),
          discussion: fc.constantFrom('each-pour', 'each-flight', 'at-the-end'),
          ranking: fc.constantFrom('none', 'each-flight', 'at-the-end'),
          blind: fc.boolean(),
          practice: fc.boolean(),
          closingPass: fc.boolean(),
        }),
        ({ pours, ...more }) => planFault(planOf(pours, more)) === undefined,
      ),
      { numRuns: 60 },
    );
  });
});
