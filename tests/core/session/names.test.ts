import { describe, expect, it } from 'vitest';
import { cueId, type PourId, pourId } from '../../../core/ids.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { screenView } from '../../../core/session/views/screen.ts';
import { stageView } from '../../../core/session/views/stage.ts';
import { flightsOf, planSchema } from '../../../core/tasting.ts';
import { ash, birch, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const cedar = pourId('cedar');
const names = cueId('flight-1/reveal');
const blind = () => new EveningTold(planOf(6, { blind: true })).goTo('flight-1/reveal');
const seen = (evening: EveningTold) => {
  const view = hostView(evening.underWay, 1);
  if (view.status !== 'under-way') throw new Error('The evening is under way.');
  return view;
};
const tell = (evening: EveningTold, pour: PourId, from = names) =>
  evening.host({ type: 'Reveal', pours: [pour], from });
const named = (evening: EveningTold) =>
  stageView(evening.underWay, 1).glasses.flatMap(({ pour }) => (pour?.kind === 'named' ? [pour.id] : []));

describe('names, one by one', () => {
  it('[P21] are told glass by glass, in the order of tasting, and then the room moves on', () => {
    const evening = blind();
    for (const pour of [ash, birch, cedar]) {
      expect(seen(evening)).toMatchObject({ naming: 'one-by-one' });
      expect(seen(evening).toTell[0]).toBe(pour);
      expect(tell(evening, pour)).toBe('done');
      expect(stageView(evening.underWay, 1).justTold).toEqual([pour]);
    }
    expect(seen(evening).toTell).toEqual([]);
    expect(evening.host({ type: 'Advance', from: names })).toBe('done');
    expect(evening.cue).toBe('flight-1/break');
  });

  it('[P21, Q4] one told tells nothing of the others', () => {
    const evening = blind();
    tell(evening, birch);
    expect(named(evening)).toEqual([birch]);
    expect(JSON.stringify(stageView(evening.underWay, 1))).not.toMatch(/The (ash|cedar) cask/);
  });

  it('[P1, P21] a tap that was made in another cue, or for a name that is told, tells nothing', () => {
    const evening = blind();
    expect(tell(evening, ash, cueId('flight-1/discussion'))).toBe('moved-on');
    expect(named(evening)).toEqual([]);
    expect(tell(evening, ash)).toBe('done');
    expect(tell(evening, ash)).toBe('nothing-to-do');
    expect(named(evening)).toEqual([ash]);
    evening.goTo('flight-1/break');
    expect(tell(evening, birch)).toBe('moved-on');
  });

  it('[P21] back and forth tells no name twice, and none is lost', () => {
    const evening = blind();
    tell(evening, ash);
    evening.host({ type: 'GoBack', from: names });
    evening.host({ type: 'Advance', from: cueId('flight-1/discussion') });
    expect(seen(evening).toTell).toEqual([birch, cedar]);
    tell(evening, birch);
    tell(evening, cedar);
    evening.host({ type: 'GoBack', from: names });
    evening.host({ type: 'Advance', from: cueId('flight-1/discussion') });
    expect(seen(evening).toTell).toEqual([]);
    expect(evening.events.filter(({ type }) => type === 'PoursRevealed')).toHaveLength(3);
  });

  it('[P10, P21] a glass that was dropped is not told', () => {
    const evening = new EveningTold(planOf(6, { blind: true }));
    evening.host({ type: 'DropPour', pour: birch });
    expect(seen(evening.goTo('flight-1/reveal')).toTell).toEqual([ash, cedar]);
  });

  it('[F6, P21] with own orders they are told by their codes, and not in the order of the plan', () => {
    const plain = planOf(6, { blind: true });
    const codes = { ash: '903', birch: '112', cedar: '540' };
    const rows = flightsOf(plain).map(({ pours }) => ({ rows: [pours.map(({ id }) => id)] }));
    const plan = planSchema.parse({ ...plain, ownOrders: true, servingOrders: rows, codes });
    const evening = new EveningTold(plan).goTo('flight-1/reveal');
    for (const pour of [ash, birch, cedar]) evening.goTo(`${pour}/first/look`);
    expect(seen(evening.goTo('flight-1/reveal')).toTell).toEqual([birch, cedar, ash]);
  });

  it('can be told all at once where the plan says so', () => {
    const evening = new EveningTold(planOf(3, { blind: true, naming: 'all-at-once' })).goTo(
      'flight-1/reveal',
    );
    expect(seen(evening)).toMatchObject({ naming: 'all-at-once', toTell: [ash, birch, cedar] });
    evening.host({ type: 'Reveal', pours: seen(evening).toTell, from: names });
    expect(named(evening)).toEqual([ash, birch, cedar]);
    expect(stageView(evening.underWay, 1).justTold).toEqual([ash, birch, cedar]);
  });

  it('tells nothing anywhere but at the names', () => {
    expect(seen(new EveningTold(planOf(3, { blind: true })).goTo('flight-1/discussion')).toTell).toEqual([]);
  });
});

describe('the screens for the room', () => {
  const page = { is: 'page', page: 'card/ash' } as const;
  const room = { is: 'room' };

  it('[F8] follow the room until the host gives them to a page, which goes with its cue', () => {
    const evening = blind();
    expect(screenView(evening.underWay)).toEqual({ cue: names, shows: room });
    expect(evening.host({ type: 'SteerScreen', shows: page })).toBe('done');
    expect(evening.host({ type: 'SteerScreen', shows: { ...page } })).toBe('nothing-to-do');
    expect(screenView(evening.underWay)).toEqual({ cue: names, shows: page });
    expect(seen(evening).screen).toEqual(page);
    evening.host({ type: 'Advance', from: names });
    expect(screenView(evening.underWay).shows).toEqual(room);
  });

  it('[F8] turn to the glass whose name is told', () => {
    const evening = blind();
    tell(evening, ash);
    evening.host({ type: 'SteerScreen', shows: page });
    tell(evening, birch);
    expect(screenView(evening.underWay).shows).toEqual(room);
  });

  it('[F8] stay dark until the host ends it or the evening', () => {
    const evening = blind();
    evening.host({ type: 'SteerScreen', shows: { is: 'dark' } });
    tell(evening, ash);
    evening.goTo('dogwood/first/look');
    expect(screenView(evening.underWay).shows).toEqual({ is: 'dark' });
    evening.host({ type: 'SteerScreen', shows: { is: 'room' } });
    expect(screenView(evening.underWay).shows).toEqual(room);
    evening.host({ type: 'SteerScreen', shows: { is: 'dark' } });
    evening.host({ type: 'Finish' });
    if (evening.session.status !== 'finished') throw new Error('The evening is over.');
    expect(screenView(evening.session)).toEqual({ cue: null, shows: room });
    expect(evening.host({ type: 'SteerScreen', shows: { is: 'dark' } })).toBe('finished');
  });
});
