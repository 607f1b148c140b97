import { describe, expect, it } from 'vitest';
import { type PourId, pourId, seatId } from '../../../core/ids.ts';
import { designServingOrders } from '../../../core/planning/serving/serving-orders.ts';
import {
  placesOf,
  positionNow,
  reachedBy,
  servedInOwnOrders,
  servedTo,
} from '../../../core/session/serving.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { flightsOf, type Plan, type Trial } from '../../../core/tasting.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

/** A blind tasting of four in one flight, drawn by the balanced design for four: four rows. */
function blindFour(): Plan {
  const plan = planOf(4, { blind: true, ownOrders: true, flightSizes: [4], discussion: 'each-pour' });
  const ids = flightsOf(plan).map((flight) => flight.pours.map((pour) => pour.id));
  const { flights } = designServingOrders(ids, seededRandom(7));
  return {
    ...plan,
    servingOrders: flights.map(({ rows }) => ({ rows: rows.map((row) => row.map(pourId)) })),
  };
}
const coded = (plan: Plan): Plan => ({
  ...plan,
  codes: { ash: '731', birch: '402', cedar: '566', dogwood: '118' },
});
const names = ['ada', 'ben', 'cleo', 'dai'];

function inHand(evening: EveningTold, name: string): PourId | undefined {
  const stage = stageView(evening.underWay, 1);
  if (stage.status !== 'under-way') throw new Error('not under way');
  const view = seatView(evening.underWay, seatId(name), 1);
  return view?.served?.[(stage.cue.position ?? 0) - 1]?.id;
}

describe('own orders', () => {
  it('[F6] put each pour before some seat in each place, and each seat meets each pour once', () => {
    const evening = new EveningTold(blindFour()).sit(...names);
    const met = new Map(names.map((name) => [name, [] as PourId[]]));
    for (const place of ['ash', 'birch', 'cedar', 'dogwood']) {
      evening.goTo(`${place}/first/nose`);
      const together = names.map((name) => inHand(evening, name));
      expect(new Set(together).size).toBe(4);
      names.forEach((name, index) => {
        met.get(name)?.push(together[index] ?? pourId('nothing'));
      });
    }
    for (const pours of met.values()) expect(new Set(pours).size).toBe(4);
  });

  it('[F6, Q4] name no pour in hand on the stage that all share, nor a later one in the seat view', () => {
    const evening = new EveningTold(blindFour()).sit(...names).goTo('ash/first/nose');
    const stage = stageView(evening.underWay, 1);
    for (const pour of evening.underWay.plan.pours)
      expect(JSON.stringify(stage.glasses)).not.toContain(pour.id);
    expect(stage).toMatchObject({
      ownOrders: true,
      cue: { id: 'place-1/first/nose', position: 1, pours: [] },
    });
    // Nothing else of the stage says which pour the plan has there.
    for (const pour of evening.underWay.plan.pours) expect(JSON.stringify(stage)).not.toContain(pour.id);
    const view = seatView(evening.underWay, seatId('ada'), 1);
    expect(view?.served?.map((card) => card?.kind ?? null)).toEqual(['coded', null, null, null]);
    expect(reachedBy(evening.underWay, seatId('ada'))).toEqual([inHand(evening, 'ada')]);
  });

  it('[F6, Q4] tell the whole room a pour by its code once it is talked about, and by its name once it is named', () => {
    const evening = new EveningTold(coded(blindFour())).sit(...names);
    const cards = () => stageView(evening.underWay, 1).cards.map((card) => [card.id, card.kind]);
    for (const place of ['ash', 'birch', 'cedar', 'dogwood']) evening.goTo(`${place}/first/nose`);
    expect(cards()).toEqual([]);
    evening.goTo('flight-1/discussion').host({ type: 'OpenDiscussion', pours: ['ash', 'birch'].map(pourId) });
    // In the order of their codes, which says nothing of the order of entry.
    expect(cards()).toEqual([
      ['birch', 'coded'],
      ['ash', 'coded'],
    ]);
    evening.goTo('flight-1/reveal').host({ type: 'Reveal', pours: ['ash', 'dogwood'].map(pourId) });
    expect(cards()).toEqual([
      ['dogwood', 'named'],
      ['birch', 'coded'],
      ['ash', 'named'],
    ]);
    const common = new EveningTold(planOf(2, { blind: true })).goTo('ash/first/nose');
    common.host({ type: 'Reveal', pours: [pourId('ash')] });
    expect(stageView(common.underWay, 1).cards).toEqual([]);
  });

  it('[F6] talk only after the flight', () => {
    const cues = new EveningTold(blindFour()).underWay.cues.map((cue) => String(cue.id));
    expect(cues.filter((id) => id.endsWith('/discussion'))).toEqual(['flight-1/discussion']);
  });

  it('[F6] neither talk nor name before every seat has had all of the flight', () => {
    const evening = new EveningTold(blindFour()).sit(...names);
    const ash = { pours: [pourId('ash')] };
    const met = () => hostView(evening.underWay, 1).pours.filter(({ reached }) => reached);
    for (const place of ['ash', 'birch', 'cedar']) {
      evening.goTo(`${place}/first/nose`);
      expect(evening.host({ type: 'OpenDiscussion', ...ash })).toBe('not-reached');
      expect(evening.host({ type: 'Reveal', ...ash })).toBe('not-reached');
      expect(met()).toEqual([]);
    }
    evening.goTo('dogwood/first/nose');
    expect(met()).toHaveLength(4);
    expect(evening.host({ type: 'OpenDiscussion', ...ash })).toBe('done');
    expect(evening.host({ type: 'Reveal', ...ash })).toBe('done');
  });

  it('[F6] do not wait for a pour that was left out', () => {
    const evening = new EveningTold(blindFour()).sit(...names);
    for (const place of ['ash', 'birch', 'cedar']) evening.goTo(`${place}/first/nose`);
    evening.host({ type: 'DropPour', pour: pourId('dogwood') });
    const three = ['ash', 'birch', 'cedar'].map(pourId);
    expect(evening.host({ type: 'OpenDiscussion', pours: three })).toBe('done');
    expect(evening.host({ type: 'Reveal', pours: [pourId('dogwood')] })).toBe('not-reached');
  });

  it('take a dropped pour out of every seat’s order', () => {
    const evening = new EveningTold(blindFour()).sit(...names);
    evening.host({ type: 'DropPour', pour: pourId('cedar') });
    evening.goTo('ash/first/nose').goTo('birch/first/nose').goTo('dogwood/first/nose');
    for (const name of names) {
      const view = seatView(evening.underWay, seatId(name), 1);
      expect(view?.served?.map((card) => card?.id).toSorted()).toEqual(['ash', 'birch', 'dogwood']);
    }
  });

  it('fall back to the common order when the rows do not cover the flights, or the pours are not blind', () => {
    const plan = blindFour();
    for (const other of [
      { ...plan, servingOrders: [] },
      { ...plan, blind: false },
      { ...plan, flightSizes: [2, 2] },
    ]) {
      const evening = new EveningTold(other).sit('ada').goTo('ash/first/nose');
      expect(stageView(evening.underWay, 1)).toMatchObject({ ownOrders: false, cue: { pours: ['ash'] } });
      expect(seatView(evening.underWay, seatId('ada'), 1)?.served).toBeNull();
    }
  });
});

describe('rows', () => {
  const plan = planOf(4, { blind: true, ownOrders: true, flightSizes: [2, 2] });
  const rowsOf = (...flights: readonly (readonly string[])[][]): Plan => ({
    ...plan,
    servingOrders: flights.map((rows) => ({ rows: rows.map((row) => row.map(pourId)) })),
  });
  const first = [
    ['ash', 'birch'],
    ['birch', 'ash'],
  ];
  const second = [['dogwood', 'cedar']];

  it('hold only when every one of them has each pour of its flight once', () => {
    expect(servedInOwnOrders(rowsOf(first, second))).toBe(true);
    for (const wrong of [
      [],
      [['cedar']],
      [['cedar', 'cedar']],
      [['cedar', 'dogwood', 'cedar']],
      [['cedar', 'ash']],
      [['dogwood', 'cedar'], ['cedar']],
    ]) {
      expect(servedInOwnOrders(rowsOf(first, wrong))).toBe(false);
      expect(servedInOwnOrders(rowsOf(wrong, second))).toBe(false);
    }
    expect(servedInOwnOrders(rowsOf(first))).toBe(false);
    expect(servedInOwnOrders({ ...rowsOf(first, second), ownOrders: false })).toBe(false);
  });

  it('serve a seat flight by flight, and over again when there are more seats than rows', () => {
    const served = (row: number) => servedTo({ plan: rowsOf(first, second), dropped: [] }, { row });
    expect(served(0)).toEqual(['ash', 'birch', 'dogwood', 'cedar']);
    expect(served(1)).toEqual(['birch', 'ash', 'dogwood', 'cedar']);
    expect(served(2)).toEqual(served(0));
    expect(servedTo({ plan, dropped: [pourId('birch')] }, { row: 1 })).toEqual(['ash', 'cedar', 'dogwood']);
    expect(placesOf({ plan, dropped: [pourId('birch')] })).toEqual([
      { position: 1, flight: 0, named: 'ash' },
      { position: 3, flight: 1, named: 'cedar' },
      { position: 4, flight: 1, named: 'dogwood' },
    ]);
  });

  it('[Q1] say which notes a seat may write: of its own glasses, and of an odd-one-out once that was reached', () => {
    const trial: Trial = {
      id: pourId('juniper'),
      flight: 0,
      a: pourId('ash'),
      b: pourId('birch'),
      codes: { a: ['417', '952'], b: ['638', '285'] },
      orders: ['AAB'],
    };
    const other = { ...trial, id: pourId('larch') };
    const evening = new EveningTold({ ...rowsOf(first, second), trials: [trial, other] }).sit('ada', 'ben');
    const reached = (seat: string) => reachedBy(evening.underWay, seatId(seat));
    evening.goTo('ash/first/nose');
    expect([reached('ada'), reached('ben')]).toEqual([['ash'], ['birch']]);
    evening.goTo('juniper/odd-one-out');
    expect([reached('ada'), reached('ben')]).toEqual([
      ['ash', 'juniper'],
      ['birch', 'juniper'],
    ]);
    // Who has no seat has no row either.
    expect(reached('nobody')).toEqual(['ash', 'juniper']);
  });

  it('[F6, Q4] stay hidden in the water after a glass; the talk names its pours for all', () => {
    const evening = new EveningTold(rowsOf(first, second)).sit('ada').goTo('ash/water');
    const stage = () => stageView(evening.underWay, 1);
    expect(stage()).toMatchObject({ cue: { kind: 'water', position: 1, pours: [] } });
    evening.goTo('birch/water').goTo('flight-1/discussion');
    expect(stage()).toMatchObject({ cue: { position: null, pours: ['ash', 'birch'] } });
  });

  it('put no glass in hand outside of steps and water', () => {
    const evening = new EveningTold(planOf(3)).goTo('birch/first/nose');
    expect(positionNow(evening.underWay)).toBe(2);
    evening.goTo('flight-1/discussion');
    expect(positionNow(evening.underWay)).toBeUndefined();
    // The host may go back to a glass that was dropped; it has no place any more.
    evening.host({ type: 'DropPour', pour: pourId('birch') });
    expect(positionNow(evening.goTo('birch/first/nose').underWay)).toBeUndefined();
  });
});
