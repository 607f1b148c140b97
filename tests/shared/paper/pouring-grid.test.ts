import { describe, expect, it } from 'vitest';
import { commandId, pourId, seatId } from '../../../core/ids.ts';
import { levelsOf, nothingPoured, ticked } from '../../../core/planning/serving/pouring.ts';
import { columnsOf, readyIn, rowsOf } from '../../../core/planning/serving/pouring-grid.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { withTicks } from '../../../host/pouring/pending-ticks.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

describe('the grid of the pour run', () => {
  it('has the plan’s places before anybody has come, and the glass that each pour is', () => {
    const rows = rowsOf(planOf(6, { guests: 3 }), []);
    expect(rows.map(({ place, name }) => [place, name])).toEqual([
      [1, null],
      [2, null],
      [3, null],
    ]);
    expect(rows[0]?.glasses.get(pourId('cedar'))).toEqual({ position: 3 });
  });

  it('tells who sits where, makes room for more guests, and leaves out who is at home', () => {
    const plan = planOf(3, { guests: 2 });
    const told = new EveningTold(plan).sit('Ada', 'Bo', 'Cy', 'Di');
    told.guest('Bo', { type: 'ChangeSeat', remote: true });
    told.host({ type: 'RemoveSeat', seat: seatId('Cy') });
    expect(rowsOf(plan, hostView(told.underWay, 1).seats).map(({ place, name }) => [place, name])).toEqual([
      [1, 'Ada'],
      [3, null],
      [4, 'Di'],
    ]);
  });

  it('has columns in pouring order, with codes only where pours are blind', () => {
    const plan = planOf(4, { drink: 'wine', blind: true, codes: { ash: '418' }, flightSizes: [2, 2] });
    const columns = columnsOf(plan);
    expect(columns.map(({ id, flight, code }) => [id, flight, code])).toEqual([
      ['ash', 0, '418'],
      ['birch', 0, null],
      ['cedar', 1, null],
      ['dogwood', 1, null],
    ]);
    expect(columns[0]?.steps).toEqual([{ step: 'poured', moves: 1 }]);
  });

  it('counts the glasses that have all their steps, with the taps that are still on their way', () => {
    const plan = planOf(2, { guests: 2 });
    const [rows, columns] = [rowsOf(plan, []), columnsOf(plan)];
    const tap = { id: commandId('tap-0001'), places: [1, 2], pours: [pourId('ash')], done: 5 };
    expect(readyIn(levelsOf(ticked(nothingPoured, tap)), rows, columns)).toBe(2);
    expect(readyIn(withTicks([], [{ ...tap, done: 4 }]), rows, columns)).toBe(0);
    expect(readyIn(withTicks([], [tap]), rows, columns)).toBe(2);
  });
});
