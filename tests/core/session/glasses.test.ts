import { describe, expect, it } from 'vitest';
import { cueId, type PourId, pourId, seatId } from '../../../core/ids.ts';
import { pourOf } from '../../../core/running-order/cue.ts';
import { glassNumbers } from '../../../core/running-order/glass-numbers.ts';
import { glassesToCome } from '../../../core/session/arrangement.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { placesOf } from '../../../core/session/serving.ts';
import { unopened } from '../../../core/session/state.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import type { Bottle, Plan } from '../../../core/tasting.ts';
import { seconds } from '../../../core/units.ts';
import { ash, birch, cedar, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

/** The plan lives on after the doors open: bottles, facts, a spare pour and the order of what is still to come. */

const dogwood = pourId('dogwood');
const spare = pourId('spare');
const bottle: Bottle = { name: 'Ferry House', producer: 'Low Quay', abv: 46 };
const codes = { ash: '731', birch: '402', cedar: '566', dogwood: '218', elm: '643', fir: '295' };
const blind = (more: Partial<Plan> = {}): Plan => planOf(6, { blind: true, codes, ...more });

/** Glasses in the order in which the room comes to them. */
const tasted = ({ underWay: { cues } }: EveningTold): string[] => [
  ...new Set(cues.flatMap((cue) => (cue.kind === 'step' ? [String(pourOf(cue))] : []))),
];
const numbers = ({ underWay }: EveningTold) => Object.fromEntries(glassNumbers(underWay.plan));
const ids = ({ underWay }: EveningTold) => underWay.cues.map(({ id }) => String(id));
const stageOf = ({ underWay }: EveningTold) => JSON.stringify(stageView(underWay, 0));
const replayed = ({ events }: EveningTold) => evolveAll(unopened, JSON.parse(JSON.stringify(events)));

describe('[P22] another bottle', () => {
  it('takes the place of one: the glass keeps its id, its number, its code, its steps and its drink', () => {
    const evening = new EveningTold(blind()).sit('ada').goTo('birch/first/nose');
    const before = evening.underWay;
    expect(evening.host({ type: 'SwapBottle', pour: birch, bottle })).toBe('done');
    const now = evening.underWay;
    expect(now.plan.pours[1]).toEqual({ ...bottle, id: birch, drink: before.plan.pours[1]?.drink });
    expect(now.cues).toBe(before.cues);
    expect(now.clock).toBe(before.clock);
    expect(now.plan.codes).toBe(before.plan.codes);
    expect(numbers(evening)).toEqual({ ash: 1, birch: 2, cedar: 3, dogwood: 4, elm: 5, fir: 6 });
    expect(replayed(evening)).toEqual(now);
  });

  it('[Q4] is nothing to a guest before the reveal, whether the glass is to come, in hand or behind', () => {
    const evening = new EveningTold(blind()).sit('ada').goTo('ash/first/nose').goTo('birch/first/nose');
    const stage = stageOf(evening);
    const seat = JSON.stringify(seatView(evening.underWay, seatId('ada'), 0));
    for (const pour of [ash, birch, cedar]) {
      evening.host({ type: 'SwapBottle', pour, bottle });
      evening.host({ type: 'MendPour', pour, bottle: { ...bottle, story: 'A tale.', photos: {} } });
    }
    expect(stageOf(evening)).toBe(stage);
    expect(JSON.stringify(seatView(evening.underWay, seatId('ada'), 0))).toBe(seat);
    evening.host({ type: 'Reveal', pours: [birch] });
    expect(stageOf(evening)).toContain('Ferry House');
    expect(stageOf(evening)).not.toContain('birch cask');
  });

  it('shows everybody the mended facts of a pour that may be named', () => {
    const evening = new EveningTold(planOf(3)).goTo('ash/first/nose');
    evening.host({ type: 'MendPour', pour: ash, bottle });
    evening.host({ type: 'MendPour', pour: cedar, bottle: { ...bottle, name: 'Not yet' } });
    expect(stageOf(evening)).toContain('Ferry House');
    expect(stageOf(evening)).not.toContain('Not yet');
    expect(hostView(evening.underWay, 1)).toMatchObject({
      planChanges: 2,
      pours: [{ name: 'Ferry House' }, {}, { name: 'Not yet' }],
    });
  });

  it('tells a swapped bottle from a mended one in the log, and refuses a pour that is not there', () => {
    const evening = new EveningTold(planOf(3));
    evening.host({ type: 'SwapBottle', pour: ash, bottle });
    evening.host({ type: 'MendPour', pour: ash, bottle });
    expect(evening.events.slice(-2)).toMatchObject([{ swapped: true }, { swapped: false }]);
    expect(evening.host({ type: 'SwapBottle', pour: spare, bottle })).toBe('no-such-pour');
  });
});

describe('[P23] numbers', () => {
  const positions = (evening: EveningTold) =>
    stageView(evening.underWay, 1).glasses.map(({ position }) => position);

  it('leave a gap where a glass was dropped: glass 5 stays glass 5', () => {
    const evening = new EveningTold(planOf(6)).goTo('elm/first/nose');
    evening.host({ type: 'DropPour', pour: birch });
    expect(positions(evening)).toEqual([1, 3, 4, 5, 6]);
    expect(stageView(evening.underWay, 1)).toMatchObject({ cue: { position: 5 } });
    expect(hostView(evening.underWay, 1).pours[4]).toMatchObject({ id: 'elm', position: 5 });
  });

  it('go with their glasses into another order', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/first/nose');
    const order = ['fir', 'birch', 'elm', 'cedar', 'dogwood'].map(pourId);
    expect(evening.host({ type: 'ReorderGlasses', order })).toBe('done');
    expect(numbers(evening)).toEqual({ ash: 1, birch: 2, cedar: 3, dogwood: 4, elm: 5, fir: 6 });
    expect(positions(evening)).toEqual([1, 2, 3, 4, 5, 6]);
    evening.goTo('fir/first/nose');
    expect(stageView(evening.underWay, 1)).toMatchObject({ cue: { position: 6, pours: ['fir'] } });
    evening.host({ type: 'ReorderGlasses', order: ['cedar', 'dogwood', 'birch', 'elm'].map(pourId) });
    expect(numbers(evening)).toEqual({ ash: 1, birch: 2, cedar: 3, dogwood: 4, elm: 5, fir: 6 });
    expect(replayed(evening)).toEqual(evening.underWay);
  });

  it('give a pour that is added the next that is free, wherever it is tasted', () => {
    const evening = new EveningTold(blind()).goTo('ash/first/nose');
    evening.host({ type: 'DropPour', pour: birch });
    const ask = { type: 'AddPour', pour: spare, drink: 'spirit', bottle, code: '318' } as const;
    expect(evening.host(ask)).toBe('done');
    const order = ['spare', 'cedar', 'dogwood', 'elm', 'fir'].map(pourId);
    expect(evening.host({ type: 'ReorderGlasses', order })).toBe('done');
    expect(numbers(evening)).toMatchObject({ fir: 6, spare: 7 });
    expect(tasted(evening)).toEqual(['ash', 'birch', 'spare', 'cedar', 'dogwood', 'elm', 'fir']);
    expect(stageOf(evening)).not.toContain('Ferry House');
  });

  it('with own orders are those of each seat’s own mat, also when a glass is gone from it', () => {
    const rows = [
      ['ash', 'birch', 'cedar'],
      ['birch', 'cedar', 'ash'],
    ].map((row) => row.map(pourId));
    const evening = new EveningTold(
      planOf(3, { blind: true, codes, ownOrders: true, flightSizes: [3], servingOrders: [{ rows }] }),
    ).sit('ada', 'ben');
    evening.goTo('ash/first/nose').host({ type: 'DropPour', pour: birch });
    const served = (name: string) => seatView(evening.underWay, seatId(name), 1)?.servedAt;
    // On Ada’s mat the second glass is missing, on Ben’s the first.
    expect([served('ada'), served('ben')]).toEqual([
      [1, 3],
      [2, 3],
    ]);
    expect(placesOf(evening.underWay).map(({ position }) => position)).toEqual([1, 3]);
  });
});

describe('[P24] the order of what is to come', () => {
  it('is another one ahead, and the same behind and where the room stands', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/water').goTo('birch/first/nose');
    const before = evening.underWay;
    expect(glassesToCome(before)).toEqual(['cedar', 'dogwood', 'elm', 'fir']);
    evening.host({ type: 'ReorderGlasses', order: ['fir', 'dogwood', 'elm', 'cedar'].map(pourId) });
    expect(tasted(evening)).toEqual(['ash', 'birch', 'fir', 'dogwood', 'elm', 'cedar']);
    const { at } = before;
    expect(evening.underWay.cues.slice(0, at + 1)).toEqual(before.cues.slice(0, at + 1));
    expect(evening.underWay.clock).toEqual(before.clock);
    expect(evening.cue).toBe('birch/first/nose');
    expect(ids(evening).toSorted()).toEqual(before.cues.map(({ id }) => String(id)).toSorted());
    // A talk is about the glasses of its own flight.
    expect(evening.underWay.cues.find(({ id }) => id === 'flight-1/discussion')).toMatchObject({
      pours: ['ash', 'birch', 'fir'],
    });
  });

  it('keeps lengths and words that were set by hand or fitted, and the breaks that were called', () => {
    const evening = new EveningTold(planOf(6)).goTo('ash/first/nose');
    evening.host({ type: 'CallBreak', seconds: seconds(300) });
    evening.host({ type: 'GoBack', from: cueId(evening.cue) });
    evening.host({ type: 'EditCue', cue: cueId('fir/first/nose'), seconds: seconds(77), say: 'Slowly.' });
    evening.host({
      type: 'ReorderGlasses',
      order: ['fir', 'elm', 'dogwood', 'cedar', 'birch'].map(pourId),
    });
    const at = ids(evening).indexOf('called-break-1');
    expect(ids(evening)[at + 1]).toBe('ash/first/nose');
    expect(evening.underWay.cues.find(({ id }) => id === 'fir/first/nose')).toMatchObject({
      ideal: 77,
      say: 'Slowly.',
    });
    expect(tasted(evening)).toEqual(['ash', 'fir', 'elm', 'dogwood', 'cedar', 'birch']);
  });

  it('is refused for any glasses but those to come, for the same order, and where each seat has its own', () => {
    const evening = new EveningTold(planOf(3)).goTo('ash/first/nose');
    const asked = (...order: string[]) => evening.host({ type: 'ReorderGlasses', order: order.map(pourId) });
    expect(asked('birch', 'cedar')).toBe('nothing-to-do');
    expect(asked('cedar', 'birch', 'ash')).toBe('moved-on');
    expect(asked('cedar')).toBe('moved-on');
    expect(asked('cedar', 'cedar')).toBe('moved-on');
    expect(asked('cedar', 'birch')).toBe('done');
    const rows = [['ash', 'birch'].map(pourId)];
    const own = new EveningTold(
      planOf(2, { blind: true, codes, ownOrders: true, servingOrders: [{ rows }] }),
    );
    expect(own.host({ type: 'ReorderGlasses', order: [birch, ash] })).toBe('own-orders');
  });

  it('takes an odd-one-out along behind the flight of its drinks', () => {
    const trial = { id: pourId('odd'), flight: 0, a: birch, b: cedar, orders: ['AAB' as const] };
    const evening = new EveningTold(
      planOf(6, { trials: [{ ...trial, codes: { a: ['124', '235'], b: ['346', '457'] } }] }),
    ).goTo('ash/first/nose');
    evening.host({
      type: 'ReorderGlasses',
      order: ['fir', 'dogwood', 'elm', 'cedar', 'birch'].map(pourId),
    });
    const order = ids(evening);
    expect(order.indexOf('odd/odd-one-out')).toBeGreaterThan(order.indexOf('birch/water'));
    expect(evening.underWay.plan.trials[0]?.flight).toBe(1);
  });
});

describe('a spare pour', () => {
  const add = (evening: EveningTold, code: string | null = null, pour: PourId = spare) =>
    evening.host({ type: 'AddPour', pour, drink: 'spirit', bottle, code });

  it('ends the last flight, and its talk and names know of it', () => {
    const evening = new EveningTold(planOf(6)).goTo('fir/first/nose');
    expect(add(evening)).toBe('done');
    expect(tasted(evening).at(-1)).toBe('spare');
    const talk = evening.underWay.cues.find(({ id }) => id === 'flight-2/discussion');
    expect(talk).toMatchObject({ pours: ['dogwood', 'elm', 'fir', 'spare'] });
    expect(replayed(evening)).toEqual(evening.underWay);
    expect(evening.goTo('spare/first/swirl').next(3).cue.startsWith('spare/')).toBe(true);
  });

  it('is a flight of its own, with a break before it [C1], once the last one is behind the room', () => {
    const evening = new EveningTold(planOf(6)).goTo('flight-2/discussion');
    expect(add(evening)).toBe('done');
    const after = ids(evening).slice(evening.underWay.at + 1);
    expect(after[0]).toBe('flight-2/break');
    expect(after[1]).toBe('spare/first/swirl');
    expect(after.slice(-2)).toEqual(['flight-3/discussion', 'farewell']);
  });

  it('is one too where each seat has an order of its own, and everybody has it together', () => {
    const rows = [
      ['ash', 'birch'],
      ['birch', 'ash'],
    ].map((row) => row.map(pourId));
    const evening = new EveningTold(
      planOf(2, { blind: true, codes, ownOrders: true, flightSizes: [2], servingOrders: [{ rows }] }),
    ).sit('ada', 'ben');
    expect(add(evening, '318')).toBe('done');
    evening.goTo('spare/first/nose');
    for (const name of ['ada', 'ben']) {
      expect(seatView(evening.underWay, seatId(name), 1)?.served?.[2]).toMatchObject({
        id: 'spare',
        code: '318',
      });
    }
  });

  it('needs a code of its own where pours are blind, and room in the evening', () => {
    const evening = new EveningTold(blind());
    expect(add(evening, null)).toBe('code-taken');
    expect(add(evening, '731')).toBe('code-taken');
    expect(add(evening, '318')).toBe('done');
    expect(add(evening, '319')).toBe('nothing-to-do');
    for (let more = 8; more <= 16; more += 1)
      expect(add(evening, String(500 + more), pourId(`more-${more}`))).toBe('done');
    expect(add(evening, '529', pourId('too-many'))).toBe('too-many-pours');
    expect(dogwood in evening.underWay.plan.codes).toBe(true);
  });
});
