import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commandId, type PourId, pourId } from '../../../../core/ids.ts';
import {
  levelOf,
  levelsOf,
  nextOfGroup,
  nothingPoured,
  type Pouring,
  pouringStepsOf,
  stepsDone,
  type Tick,
  ticked,
  ticksThatCanBeUndone,
  undone,
} from '../../../../core/planning/serving/pouring.ts';
import { numberAt } from '../../../../core/planning/serving/pouring-order.ts';
import type { Plan } from '../../../../core/tasting.ts';
import { planOf } from '../../../support/plans.ts';

const pours = ['ash', 'birch', '__proto__', 'constructor'].map(pourId);
const [ash, birch] = ['ash', 'birch'].map(pourId) as [PourId, PourId];
const tick = (id: string, places: number[], of: PourId[], done: number): Tick => ({
  id: commandId(id),
  places,
  pours: of,
  done,
});
const ticks = fc.uniqueArray(
  fc.record({
    id: fc.string({ minLength: 8, maxLength: 8 }).map(commandId),
    places: fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { minLength: 1 }),
    pours: fc.uniqueArray(fc.constantFrom(...pours), { minLength: 1 }),
    done: fc.integer({ min: 1, max: 5 }),
  }),
  { selector: ({ id }) => id, maxLength: 40 },
);
const all = (pouring: Pouring) =>
  pours.map((pour) => [1, 2, 3, 4, 5, 6, 7, 8, 9].map((place) => levelOf(levelsOf(pouring), pour, place)));
const holding = (list: readonly Tick[]) => list.reduce(ticked, nothingPoured);

describe('the pour run', () => {
  // Common practice, no source.
  it('covers a spirit in the same breath as it is poured and watered, and only pours wine and beer', () => {
    // Moves of the hand: pour, lid; drops, a turn, lid.
    expect(pouringStepsOf('spirit', { drops: 'poured' })).toEqual([
      { step: 'covered', moves: 2 },
      { step: 'watered', moves: 5 },
    ]);
    expect(pouringStepsOf('wine', { drops: 'poured' })).toEqual([{ step: 'poured', moves: 1 }]);
    expect(pouringStepsOf('beer', { drops: 'poured' })).toEqual([{ step: 'poured', moves: 1 }]);
    // Nosed neat first, or never watered: nothing more is done before the doors open.
    for (const drops of ['after-nose', 'none'] as const) {
      expect(pouringStepsOf('spirit', { drops })).toEqual([{ step: 'covered', moves: 2 }]);
    }
  });

  it('comes to the same whatever the order in which two devices are heard, and however often', () => {
    fc.assert(
      fc.property(ticks, fc.infiniteStream(fc.nat()), (list, order) => {
        const turned = list
          .map((each) => ({ each, at: order.next().value ?? 0 }))
          .sort((a, b) => a.at - b.at)
          .map(({ each }) => each);
        expect(all(holding([...turned, ...turned]))).toEqual(all(holding(list)));
      }),
    );
  });

  it('never takes a step from a glass but by an undo', () => {
    fc.assert(
      fc.property(ticks, (list) => {
        let before = all(nothingPoured);
        list.reduce((pouring, each) => {
          const next = ticked(pouring, each);
          const now = all(next);
          for (const [row, levels] of now.entries()) {
            for (const [index, level] of levels.entries()) {
              expect(level).toBeGreaterThanOrEqual(before[row]?.[index] ?? 0);
            }
          }
          before = now;
          return next;
        }, nothingPoured);
      }),
    );
  });

  it('undoes one tick as if it had never been, and nothing else', () => {
    fc.assert(
      fc.property(ticks, fc.nat(), (list, at) => {
        const gone = list[at % Math.max(1, list.length)];
        if (gone === undefined) return;
        const left = undone(holding(list), gone.id);
        expect(left && all(left)).toEqual(all(holding(list.filter((each) => each !== gone))));
        expect(left && ticked(left, gone)).toBe(left);
        expect(left && undone(left, gone.id)).toBe(left);
      }),
    );
  });

  it('keeps the same step that the other device has ticked too', () => {
    const both = holding([tick('tablet-1', [1, 2], [ash], 1), tick('phone-01', [2], [ash], 1)]);
    const left = undone(both, commandId('tablet-1')) ?? nothingPoured;
    expect([1, 2].map((place) => levelOf(levelsOf(left), ash, place))).toEqual([0, 1]);
  });

  it('lets old ticks settle where they cannot be undone, and loses none of them', () => {
    const list = Array.from({ length: ticksThatCanBeUndone + 5 }, (_, index) =>
      tick(`tick-${1000 + index}`, [index + 1], [ash], 1),
    );
    const many = holding(list);
    expect(many.recent).toHaveLength(ticksThatCanBeUndone);
    expect(list.every((_, index) => levelOf(levelsOf(many), ash, index + 1) === 1)).toBe(true);
    expect(undone(many, commandId('tick-1000'))).toBeUndefined();
  });

  it('does not let an undone tick come back when it settles', () => {
    const first = undone(holding([tick('mistaken', [1], [ash], 3)]), commandId('mistaken')) ?? nothingPoured;
    const many = Array.from({ length: ticksThatCanBeUndone + 1 }, (_, index) =>
      tick(`tick-${1000 + index}`, [2], [birch], 1),
    ).reduce(ticked, first);
    expect(many.recent.some(({ id }) => id === 'mistaken')).toBe(false);
    expect(levelOf(levelsOf(many), ash, 1)).toBe(0);
  });
});

describe('one tap on a row or a column', () => {
  const each = (count: number) =>
    Array.from({ length: count }, (_, index) => ({ step: 'poured', moves: index + 1 }) as const);
  const five = () => each(5);
  it('brings the slowest glasses to their next step', () => {
    const some = levelsOf(holding([tick('tick-0001', [1], [ash], 2), tick('tick-0002', [2], [ash], 1)]));
    expect(nextOfGroup(some, { places: [1, 2, 3], pours: [ash] }, five)).toEqual({
      places: [1, 2, 3],
      pours: [ash],
      done: 1,
    });
    expect(nextOfGroup(some, { places: [1, 2], pours: [ash] }, five)?.done).toBe(2);
  });

  it('passes over pours that are done, and has nothing to do at the end', () => {
    const steps = (pour: PourId) => each(pour === ash ? 1 : 5);
    const poured = levelsOf(holding([tick('tick-0001', [1], [ash, birch], 1)]));
    expect(nextOfGroup(poured, { places: [1], pours: [ash, birch] }, steps)).toEqual({
      places: [1],
      pours: [birch],
      done: 2,
    });
    expect(nextOfGroup(poured, { places: [1], pours: [ash] }, steps)).toBeUndefined();
    expect(nextOfGroup([], { places: [], pours: [ash] }, steps)).toBeUndefined();
  });

  it('is done after as many taps as there are steps', () => {
    const group = { places: [1, 2, 3, 4], pours: [ash, birch] };
    let pouring = nothingPoured;
    for (let tap = 1; tap <= 5; tap += 1) {
      const next = nextOfGroup(levelsOf(pouring), group, five);
      expect(next?.done).toBe(tap);
      if (next !== undefined) pouring = ticked(pouring, { id: commandId(`tap-${tap}`), ...next });
    }
    expect(nextOfGroup(levelsOf(pouring), group, five)).toBeUndefined();
  });

  it('takes moves that belong together in one tap, also where one was ticked alone before', () => {
    const spirit = () => pouringStepsOf('spirit', { drops: 'poured' });
    const group = { places: [1, 2], pours: [ash] };
    const poured = levelsOf(holding([tick('tick-0001', [1], [ash], 1)]));
    expect(stepsDone(spirit(), levelOf(poured, ash, 1))).toBe(0);
    expect(nextOfGroup(poured, group, spirit)?.done).toBe(2);
    const covered = levelsOf(holding([tick('tick-0001', [1, 2], [ash], 2)]));
    expect(nextOfGroup(covered, group, spirit)?.done).toBe(5);
  });
});

describe('the number of a glass on a sheet of paper', () => {
  it('[P23] stays where pours moved or are gone, and is counted where each seat has its own order', () => {
    const numbered = planOf(3, { numbers: ['birch', 'gone', 'ash', 'cedar'].map(pourId) });
    const on = (plan: Plan) => plan.pours.map(({ id }, index) => numberAt(plan, id, index));
    expect(on(numbered)).toEqual([3, 1, 4]);
    expect(on(planOf(3))).toEqual([1, 2, 3]);
    const row = ['ash', 'birch', 'cedar'].map(pourId);
    const rows = [row, row.toReversed()];
    expect(on({ ...numbered, blind: true, ownOrders: true, servingOrders: [{ rows }] })).toEqual([1, 2, 3]);
  });
});
