import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { designServingOrders } from '../../../core/planning/serving/serving-orders.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import type { Plan } from '../../../core/tasting.ts';
import { ash, birch, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';

const ids = ['ash', 'birch', 'cedar', 'dogwood'];
const codes = { ash: '731', birch: '402', cedar: '566', dogwood: '118' };
const { flights } = designServingOrders([ids], seededRandom(7));
const servingOrders = flights.map(({ rows }) => ({ rows: rows.map((row) => row.map(pourId)) }));

/** The same pours, codes and glasses in every hand; only the plan's own order of the four is another. */
function planned(order: readonly string[], coded: boolean): Plan {
  const plan = planOf(4, {
    blind: true,
    ownOrders: true,
    flightSizes: [4],
    ranking: 'each-flight',
    trials: [
      {
        id: 'trial',
        flight: 0,
        a: 'ash',
        b: 'cedar',
        codes: { a: ['201', '202'], b: ['203', '204'] },
        orders: ['AAB'],
      },
    ],
    ...(coded ? { codes } : {}),
  });
  const pours = order.flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? []);
  return { ...plan, pours, servingOrders };
}

/** Every frame that a guest's phone or a screen is sent, cue by cue, to the end. */
function framesOf(plan: Plan): { readonly guests: readonly string[]; readonly host: string } {
  const evening = new EveningTold(plan).sit('ada', 'ben', 'cleo', 'dai');
  const guests: string[] = [];
  const look = (): void => {
    const { session } = evening;
    if (session.status === 'unopened') return;
    guests.push(JSON.stringify(stageView(session, 1)));
    for (const name of ['ada', 'ben', 'cleo', 'dai', 'late'])
      guests.push(JSON.stringify(seatView(session, seatId(name), 1) ?? null));
  };
  for (let cue = 0; evening.session.status === 'under-way'; cue += 1) {
    look();
    const { session } = evening;
    const [here, next] = [session.cues[cue], session.cues[cue + 1]];
    if (here?.kind === 'ranking') evening.sit('late');
    if (here?.kind === 'discussion') {
      const missed = seatView(session, seatId('late'), 1)?.missed ?? [];
      expect(evening.guest('late', { type: 'CatchUp', pour: missed[1] ?? ash })).toBe('done');
      look();
      evening.host({ type: 'OpenDiscussion', pours: [ash, birch] });
    }
    if (here?.kind === 'reveal') evening.host({ type: 'Reveal', pours: [birch] });
    look();
    if (next === undefined) evening.host({ type: 'Finish' });
    else evening.goTo(next.id);
  }
  look();
  const { session } = evening;
  return { guests, host: session.status === 'unopened' ? '' : JSON.stringify(hostView(session, 1)) };
}

describe('[Q4, F6] with own orders the order of the plan', () => {
  it.each([true, false])('is in no frame of a guest or a screen, with codes: %s', (coded) => {
    const one = framesOf(planned(ids, coded));
    const other = framesOf(planned(['cedar', 'ash', 'dogwood', 'birch'], coded));
    expect(one.guests.length).toBeGreaterThan(300);
    expect(other.guests).toHaveLength(one.guests.length);
    one.guests.forEach((frame, index) => {
      // At the end the arc names every place as it was planned.
      expect(other.guests[index], `frame ${index}`).toBe(frame);
    });
    expect(other.host).not.toBe(one.host);
  });

  it('does not say which glass a latecomer has missed: it is the one of their own place', () => {
    const evening = new EveningTold(planned(ids, true)).sit('ada');
    evening.goTo('ash/first/nose').goTo('birch/first/nose').sit('late');
    const view = seatView(evening.underWay, seatId('late'), 1);
    expect(view?.missed).toEqual(view?.served?.slice(0, 1).map((card) => card?.id));
    const [missed = ash] = view?.missed ?? [];
    expect(missed).not.toBe('ash');
    expect(evening.guest('late', { type: 'CatchUp', pour: ash })).toBe('nothing-to-do');
    expect(evening.guest('late', { type: 'CatchUp', pour: missed })).toBe('done');
    expect(seatView(evening.underWay, seatId('late'), 1)?.missed).toEqual([]);
  });
});
