import { describe, expect, it } from 'vitest';
import { seconds } from '../../../core/units.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';
import { lookBack } from './support.ts';

const newEvening = () => new EveningTold(planOf(3, { practice: false }));
const idealOf = (evening: EveningTold, id: string) =>
  evening.underWay.cues.find((cue) => cue.id === id)?.ideal ?? Number.NaN;

/** Every cue from where the room stands, each as long as asked. */
function play(evening: EveningTold, secondsFor: (ideal: number) => number) {
  for (;;) {
    const here = evening.underWay.cues.find(({ id }) => id === evening.cue);
    evening.wait(secondsFor(here?.ideal ?? 0));
    if (here?.kind === 'farewell') return evening;
    evening.next();
  }
}

describe('the timing of an evening', () => {
  it('given every cue took its time, says as planned, without the gathering', () => {
    const { timing } = lookBack(
      play(newEvening(), (ideal) => ideal),
      [],
    );
    expect(timing).toMatchObject({ overrun: 0, meaning: 'as-planned', planned: timing.took });
    expect(timing.parts.map(({ kind }) => kind)).toEqual([
      'gathering',
      'opening',
      'glass',
      'glass',
      'glass',
      'talk',
      'farewell',
    ]);
    for (const part of timing.parts) expect(part.took).toBe(part.planned);
    const gathering = timing.parts[0]?.took ?? 0;
    expect((timing.finishedAt - timing.openedAt) / 1000).toBe(timing.took + gathering);
  });

  it('given everything took half as long again, says by how much it ran over', () => {
    const { timing } = lookBack(
      play(newEvening(), (ideal) => ideal * 1.5),
      [],
    );
    expect(timing).toMatchObject({ meaning: 'ran-over', overrun: timing.planned / 2 });
  });

  it('says what was foretold at the welcome and twice after it, and whether the end lay within', () => {
    const usual = lookBack(
      play(newEvening(), (ideal) => ideal),
      [],
    ).timing;
    expect(usual.foretold.map(({ when, held }) => [when, held])).toEqual([
      ['start', true],
      ['third', true],
      ['two-thirds', true],
    ]);
    // The nearer the end, the less is open.
    const widths = usual.foretold.map(({ end }) => end.late - end.early);
    expect(widths).toEqual(widths.toSorted((one, other) => other - one));
    const { timing } = lookBack(
      play(newEvening(), (ideal) => ideal * 2.5),
      [],
    );
    expect(timing.foretold[0]).toMatchObject({ when: 'start', held: false });
    expect(timing.foretold[0]?.end.late).toBeLessThan(timing.finishedAt);
  });

  it('foretells nothing for an evening that never began, or that was opened again', () => {
    expect(lookBack(newEvening(), []).timing.foretold).toEqual([]);
    const again = play(newEvening(), (ideal) => ideal);
    again.host({ type: 'Finish' });
    again.wait(600).host({ type: 'Reopen' });
    expect(lookBack(again.wait(60), []).timing.foretold).toEqual([]);
  });

  it('compares with the plan as the doors opened, not with what was edited later', () => {
    const evening = newEvening();
    const before = idealOf(evening, 'welcome');
    const welcome = evening.underWay.cues.find(({ id }) => id === 'welcome')?.id;
    if (welcome === undefined) expect.fail('no welcome');
    expect(evening.host({ type: 'EditCue', cue: welcome, seconds: seconds(600) })).toBe('done');
    const { timing } = lookBack(
      play(evening, (ideal) => ideal),
      [],
    );
    const cue = timing.cues.find(({ cue }) => cue === 'welcome');
    expect(cue).toMatchObject({ planned: before, took: 600 });
  });

  it('adds up a cue that was gone back to, and shows both stays', () => {
    const evening = newEvening().goTo('ash/first/look').wait(30).goTo('birch/first/look').wait(40);
    const { timing } = lookBack(evening.goTo('ash/first/look').wait(50), []);
    expect(timing.cues.find(({ cue }) => cue === 'ash/first/look')?.took).toBe(80);
    expect(timing.cues.find(({ cue }) => cue === 'cedar/first/look')?.took).toBeNull();
    const glasses = timing.stretches.filter(({ part }) => timing.parts[part]?.kind === 'glass');
    expect(glasses.map(({ part, from, to }) => [timing.parts[part]?.pour, to - from])).toEqual([
      ['ash', 30],
      ['birch', 40],
      ['ash', 50],
    ]);
  });

  it('counts a called break, for which nothing was planned, and keeps the glass it interrupted in one part', () => {
    const evening = newEvening().goTo('ash/first/look').wait(20);
    evening.host({ type: 'CallBreak', seconds: seconds(300) });
    const broken = evening.wait(240).next().wait(20);
    const { timing } = lookBack(broken, []);
    expect(timing.breaks).toMatchObject({ planned: 0, taken: 1, takenSeconds: 240, called: 1 });
    expect(timing.parts.filter(({ pour }) => pour === 'ash')).toHaveLength(1);
    expect(timing.parts.find(({ called }) => called)).toMatchObject({ planned: 0, took: 240 });
  });

  it('leaves out the time in which the evening was closed by mistake', () => {
    const evening = newEvening().goTo('ash/first/look').wait(60);
    evening.host({ type: 'Finish' });
    evening.wait(3600).host({ type: 'Reopen' });
    const { timing } = lookBack(evening.wait(30), []);
    expect(timing.took).toBe(90);
    expect(timing.stretches.at(-1)).toMatchObject({ from: 0, to: 90 });
  });

  it('says of an evening that ended in the gathering that it never began', () => {
    const { timing } = lookBack(newEvening().wait(900), []);
    expect(timing).toMatchObject({ meaning: 'never-began', took: 0 });
  });
});
