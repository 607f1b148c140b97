import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { drawTrial } from '../../../core/planning/serving/trials.ts';
import { trialGlasses } from '../../../core/session/serving.ts';
import type { Plan } from '../../../core/tasting.ts';
import { shoppingFor } from '../../../host/plan/figures/shopping.ts';
import { vialLabels } from '../../../host/print/vial-labels.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

const choice = { id: pourId('odd'), flight: 0, a: pourId('ash'), b: pourId('cedar') };
const tested = (plan: Plan): Plan => ({ ...plan, trials: [drawTrial(plan, choice, seededRandom(4))] });

describe('the labels of a kit', () => {
  it('are a number for each pour of an open tasting, which tells its strength, and a code where it is blind', () => {
    expect(vialLabels(planOf(2)).map(({ mark, tells }) => [mark, tells])).toEqual([
      ['1', true],
      ['2', true],
    ]);
    const blind = planOf(2, { blind: true, codes: { ash: '417', birch: '952' } });
    expect(vialLabels(blind).map(({ mark, tells }) => [mark, tells])).toEqual([
      ['417', false],
      ['952', false],
    ]);
  });

  it('hold every glass that any seat may be asked to find in an odd-one-out, and never say what it is', () => {
    const plan = tested(planOf(3));
    const odd = vialLabels(plan).slice(3);
    expect(odd.every(({ tells }) => !tells)).toBe(true);
    const drinkOf = new Map(odd.map(({ mark, pour }) => [mark, pour.id]));
    for (const trial of plan.trials) {
      for (let row = 0; row < trial.orders.length; row += 1) {
        for (const { code, drink } of trialGlasses(trial, { row })) {
          expect(drinkOf.get(code)).toBe(trial[drink]);
        }
      }
    }
  });

  it('are as many as the vials to fill', () => {
    const plan = tested(planOf(6, { remoteGuests: 3 }));
    expect(vialLabels(plan).length * plan.remoteGuests).toBe(shoppingFor(plan, false).kit.total);
  });
});
