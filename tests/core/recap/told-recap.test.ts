import { describe, expect, it } from 'vitest';
import { cueId, pourId } from '../../../core/ids.ts';
import { roundResult, type Told } from '../../../core/panel/round-result.ts';
import type { EveningRecap } from '../../../core/recap/evening-recap.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { epochMs } from '../../../core/units.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';
import { counted, lookBack, page } from './support.ts';

const guests = ['ada', 'ben', 'cleo', 'dai', 'eve'];
const pours = ['ash', 'birch', 'cedar'];
const plan = planOf(3, { practice: false, ranking: 'each-flight', liking: true });

const ranks = (seat: string) =>
  pours.map((pour, at) => page(seat, pour, { place: at + 1, liking: 9 - at }, counted));

/** What was told of these pours with these guests, by the host's tap. */
function resultOf(of: Told, told: readonly string[], from: readonly string[]): SessionEvent {
  const values = told
    .map((pour) => pours.indexOf(pour) + 1)
    .map((place) => (of === 'order' ? place : 10 - place));
  const answers = from.map(() => ({ counts: told.map(() => true), values }));
  const part = roundResult({ of, pours: told.map(pourId), answers });
  return { type: 'ResultTold', result: { cue: cueId(`${of}/result`), at: epochMs(1), parts: [part] } };
}

/** The recap of an evening in which this was told, and in which these guests still let theirs count. */
function recapAfter(told: readonly SessionEvent[], counting: readonly string[]): EveningRecap {
  const evening = pours.reduce(
    (so, pour) => so.goTo(`${pour}/first/look`),
    new EveningTold(plan).sit(...guests),
  );
  evening.session = evolveAll(evening.session, told);
  return lookBack(evening, counting.flatMap(ranks), pours);
}

const both = [resultOf('order', pours, guests), resultOf('liking', pours, guests)];

describe('[Q8, R1] a recap of what the room was told', () => {
  it('says it as it was told, and reckons nothing beside it', () => {
    const recap = recapAfter(both, guests);
    expect(recap.told.map(({ of, counted: n }) => ({ of, n }))).toEqual([
      { of: 'order', n: 5 },
      { of: 'liking', n: 5 },
    ]);
    expect(recap).toMatchObject({ rankings: [], liking: null });
  });

  it('is the same whoever has taken theirs back since', () => {
    const all = recapAfter(both, guests);
    for (const gone of guests)
      expect(
        recapAfter(
          both,
          guests.filter((each) => each !== gone),
        ),
      ).toEqual(all);
  });

  it('would not be, were it reckoned anew: that is what is left where nothing was told', () => {
    const [ranking] = recapAfter([], guests.slice(1)).rankings;
    expect(ranking?.result).toMatchObject({ n: 4 });
    expect(recapAfter([], guests).rankings[0]?.result).toMatchObject({ n: 5 });
    // Fewer than three were told of nothing, so that there is nothing to compare with.
    const few = [resultOf('order', pours, guests.slice(0, 2))];
    expect(recapAfter(few, guests)).toMatchObject({ told: [], rankings: [{ result: { n: 5 } }] });
  });

  it('reckons the liking of those pours that nothing was told of', () => {
    const recap = recapAfter([resultOf('liking', ['ash', 'birch'], guests)], guests);
    expect(recap.liking?.outcome === 'result' && recap.liking.figures.pours.map(({ pour }) => pour)).toEqual([
      'cedar',
    ]);
    expect(recap.rankings).toHaveLength(1);
  });
});
