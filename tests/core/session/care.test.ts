import { describe, expect, it } from 'vitest';
import { seatId } from '../../../core/ids.ts';
import { pouredAt, rowsOf } from '../../../core/planning/serving/pouring-grid.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { screenView } from '../../../core/session/views/screen.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const [ada, ben] = [seatId('ada'), seatId('ben')];

describe('somebody who is unwell or has had too much', () => {
  it('[C4] is poured no more: the host, the seat itself and who pours are told, and nobody else', () => {
    const evening = new EveningTold(planOf(3, { guests: 2 })).sit('ada', 'ben').goTo('ash/first/nose');
    const forAll = () => [
      stageView(evening.underWay, 1),
      screenView(evening.underWay),
      seatView(evening.underWay, ben, 1),
    ];
    const rows = () => rowsOf(evening.underWay.plan, Object.values(evening.underWay.seats));
    const before = forAll();
    expect(evening.host({ type: 'StopPouring', seat: ada })).toBe('done');
    expect(forAll()).toEqual(before);
    expect(seatView(evening.underWay, ada, 1)?.onlyWater).toBe(true);
    expect(hostView(evening.underWay, 1).seats.map(({ onlyWater }) => onlyWater)).toEqual([true, false]);
    expect(rows().map(({ onlyWater }) => onlyWater)).toEqual([true, false]);
    expect(pouredAt(rows()).map(({ name }) => name)).toEqual(['ben']);
    expect(evening.host({ type: 'StopPouring', seat: ada })).toBe('nothing-to-do');
  });

  it('[C4] goes through the same cues, stays so when they leave and come back, and is poured again when the host says so', () => {
    const evening = new EveningTold().sit('ada').goTo('ash/first/nose');
    evening.host({ type: 'StopPouring', seat: ada });
    evening.next();
    evening.guest('ada', { type: 'LeaveTable' });
    evening.host({ type: 'RestoreSeat', seat: ada });
    expect(seatView(evening.underWay, ada, 1)).toMatchObject({ presence: 'seated', onlyWater: true });
    expect(evening.host({ type: 'ResumePouring', seat: ada })).toBe('done');
    expect(seatView(evening.underWay, ada, 1)?.onlyWater).toBe(false);
    expect(evening.host({ type: 'ResumePouring', seat: ada })).toBe('nothing-to-do');
    expect(evening.host({ type: 'StopPouring', seat: seatId('nobody') })).toBe('no-such-seat');
  });
});

describe('the cautions', () => {
  it('[C5] are known to the host to be read or not, by name and once', () => {
    const evening = new EveningTold().sit('ada', 'ben');
    expect(evening.guest('ada', { type: 'ReadCautions' })).toBe('done');
    expect(evening.guest('ada', { type: 'ReadCautions' })).toBe('nothing-to-do');
    const unread = hostView(evening.underWay, 1).seats.filter(({ cautionsRead }) => !cautionsRead);
    expect(unread.map(({ name }) => name)).toEqual(['ben']);
    expect(seatView(evening.underWay, ada, 1)?.cautionsRead).toBe(true);
  });
});
