import { describe, expect, it } from 'vitest';
import { seatId } from '../../../core/ids.ts';
import { decide } from '../../../core/session/decide.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { EveningTold } from '../../support/evening.ts';

/** Ada comes to a full table, and somebody is asked to give way. */
function adaInPlaceOf(evening: EveningTold, inPlaceOf: string) {
  const ask = {
    type: 'TakeSeat',
    seat: seatId('ada'),
    name: 'Ada',
    leftHanded: false,
    remote: false,
    inPlaceOf: seatId(inPlaceOf),
  } as const;
  return decide(evening.session, { by: 'newcomer', ask }, evening.moment);
}

describe('a newcomer at a full table', () => {
  it('[S3] takes the chair of a seat that has said nothing, with its row of the serving orders', () => {
    const evening = new EveningTold();
    evening.sit('noor', 'ghost', 'tomas');
    const { row } = evening.underWay.seats[seatId('ghost')] ?? {};
    const decision = adaInPlaceOf(evening, 'ghost');
    if (!decision.ok) throw new Error(decision.code);
    const after = evolveAll(evening.session, decision.events);
    if (after.status !== 'under-way') throw new Error(after.status);
    expect(Object.keys(after.seats)).toEqual(['noor', 'tomas', 'ada']);
    expect(after.seats[seatId('ada')]).toMatchObject({ name: 'Ada', row });
    const rows = Object.values(after.seats).map((seat) => seat.row);
    expect(new Set(rows).size).toBe(3);
  });

  it('[S3] takes nobody’s who has given a sign, nor that of whom the host has removed', () => {
    const evening = new EveningTold();
    evening.sit('accepted', 'calls', 'laid-ready', 'removed', 'left');
    evening.guest('accepted', { type: 'AcceptGroundRules' });
    evening.guest('calls', {
      type: 'GiveSignal',
      signal: 'needs-host',
      cue: evening.underWay.cues[0]?.id as never,
    });
    evening.guest('laid-ready', { type: 'CheckKit', item: 'water', ready: true });
    evening.host({ type: 'RemoveSeat', seat: seatId('removed') });
    evening.guest('left', { type: 'LeaveTable' });
    for (const each of ['accepted', 'calls', 'laid-ready', 'removed', 'nobody']) {
      expect(adaInPlaceOf(evening, each), each).toEqual({ ok: false, code: 'table-full' });
    }
    expect(adaInPlaceOf(evening, 'left').ok).toBe(true);
  });
});
