import { describe, expect, it } from 'vitest';
import { pourId } from '../../../../core/ids.ts';
import { withDrawnIds } from '../../../../core/planning/serving/drawn-ids.ts';
import { compile } from '../../../../core/running-order/compile.ts';
import {
  glassNumbers,
  numbersFixed,
  withFixedNumbers,
} from '../../../../core/running-order/glass-numbers.ts';
import { servedInOwnOrders } from '../../../../core/session/serving.ts';
import { planSchema } from '../../../../core/tasting.ts';
import { againOf, readPlanFile } from '../../../../host/plan/copies/plan-file.ts';
import { planOf } from '../../../support/plans.ts';

const row = ['ash', 'birch', 'cedar'];
const speaking = planOf(3, {
  blind: true,
  ownOrders: true,
  servingOrders: [{ rows: [row, row.toReversed()] }],
  codes: { ash: '731', birch: '402', cedar: '566' },
  cueEdits: { 'ash/first/nose': { seconds: 77 }, 'flight-1/discussion': { seconds: 300 } },
  trials: [
    {
      id: 'odd',
      flight: 0,
      a: 'ash',
      b: 'cedar',
      codes: { a: ['201', '202'], b: ['203', '204'] },
      orders: ['AAB'],
    },
  ],
});
const told = /ash|birch|cedar|odd"/;

describe('[Q4] ids drawn anew', () => {
  it('stand wherever the plan names a pour, and the evening is the same', () => {
    const given = ['x1', 'x1', 'x2', 'x3', 'x4'];
    const plan = withDrawnIds(speaking, () => given.shift() ?? 'none');
    expect(plan.pours.map(({ id }) => id)).toEqual(['x1', 'x2', 'x3']);
    expect(plan.trials).toMatchObject([{ id: 'x4', a: 'x1', b: 'x3' }]);
    expect(plan.codes).toEqual({ x1: '731', x2: '402', x3: '566' });
    expect(servedInOwnOrders(plan)).toBe(true);
    expect(planSchema.parse(plan)).toEqual(plan);
    const lengths = (of: typeof plan) => compile(of).map(({ kind, ideal }) => [kind, ideal]);
    expect(lengths(plan)).toEqual(lengths(speaking));
    expect(compile(plan).find(({ id }) => id === 'x1/first/nose')?.ideal).toBe(77);
    const named = { ...plan, pours: plan.pours.map(({ name: _, ...pour }) => pour) };
    expect(JSON.stringify(named)).not.toMatch(told);
  });

  it('are what a copy of an evening and a file that was opened have', () => {
    const opened = readPlanFile(JSON.stringify(speaking));
    if (opened.is !== 'plan') throw new Error(opened.is);
    for (const { pours, trials, codes, cueEdits } of [opened.plan, againOf(speaking, 'Again')]) {
      const ids = [...pours, ...trials].map(({ id }) => id);
      expect(new Set(ids).size).toBe(4);
      expect(JSON.stringify([ids, codes, cueEdits])).not.toMatch(told);
    }
    // [P23] A file keeps the numbers that stand on paper, gaps too; a copy of an evening begins anew.
    const numbered = { ...speaking, numbers: ['ash', 'gone', 'cedar', 'birch'].map(pourId) };
    const again = readPlanFile(JSON.stringify(numbered));
    if (again.is !== 'plan') throw new Error(again.is);
    const numbers = glassNumbers(again.plan);
    expect(again.plan.pours.map(({ id }) => numbers.get(id))).toEqual([1, 4, 3]);
    expect(JSON.stringify(again.plan.numbers)).not.toMatch(/gone|ash/);
    expect(againOf({ ...numbered, prepared: ['paper'] }, 'Again')).toMatchObject({
      numbers: [],
      prepared: [],
    });
    // [P23] A pour that came after a print is numbered by the next one, and keeps that number from then on.
    const [ash, birch, cedar] = speaking.pours;
    if (ash === undefined || birch === undefined || cedar === undefined) throw new Error('Three pours');
    const grown = { ...withFixedNumbers({ ...speaking, pours: [ash, birch] }), pours: [ash, birch, cedar] };
    expect([numbersFixed({ ...grown, pours: [ash, birch] }), numbersFixed(grown)]).toEqual([true, false]);
    const printed = { ...withFixedNumbers(grown), pours: [cedar, birch] };
    expect(Object.fromEntries(glassNumbers(printed))).toEqual({
      [cedar.id]: 3,
      [birch.id]: 2,
    });
    // Two copies cannot be joined either.
    expect(againOf(speaking, 'Again').pours[0]?.id).not.toBe(againOf(speaking, 'Again').pours[0]?.id);
  });
});
