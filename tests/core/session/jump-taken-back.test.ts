import { describe, expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { evolveAll } from '../../../core/session/evolve.ts';
import { unopened } from '../../../core/session/state.ts';
import type { Pacing } from '../../../core/tasting.ts';
import { ash, birch, cedar, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

describe('a jump that is taken back', () => {
  it('[P20] forgets the glass of a jump that is taken back, and keeps what was there before', () => {
    const evening = new EveningTold(planOf(3, { blind: true })).goTo('ash/first/nose');
    evening.goTo('cedar/first/nose');
    expect(evening.underWay.reached).toEqual([ash, cedar]);
    const back = { type: 'JumpTo', cue: cueId('ash/first/nose') } as const;
    expect(evening.host({ ...back, takesBack: cueId('cedar/first/nose') })).toBe('done');
    expect(evening.underWay.reached).toEqual([ash]);
    expect(evening.host({ type: 'Reveal', pours: [cedar] })).toBe('not-reached');
    expect(evening.host({ type: 'OpenDiscussion', pours: [cedar] })).toBe('not-reached');
    evening.host({ type: 'Finish' });
    expect(evening.session).toMatchObject({ status: 'finished', revealed: [ash] });
    expect(evolveAll(unopened, evening.events)).toEqual(evening.session);
  });

  it('[P20] takes back a jump to many glasses, but not one that stood in front of the room before', () => {
    const evening = new EveningTold(planOf(3)).goTo('birch/first/nose').goTo('ash/first/nose');
    evening.goTo('farewell').goTo('ash/first/nose');
    const talk = evening.underWay.cues.find(({ kind }) => kind === 'discussion')?.id ?? cueId('none');
    evening.goTo(talk);
    expect(evening.underWay.reached).toEqual([birch, ash, cedar]);
    evening.host({ type: 'JumpTo', cue: cueId('ash/first/nose'), takesBack: talk });
    expect(evening.underWay.reached).toEqual([birch, ash]);
  });

  it('[P20] takes back nothing of a glass that was talked about or named, or of a cue the room has left', () => {
    const opened = new EveningTold(planOf(3, { blind: true })).goTo('cedar/first/nose');
    opened.host({ type: 'Reveal', pours: [cedar] });
    opened.host({ type: 'JumpTo', cue: cueId('gathering'), takesBack: cueId('cedar/first/nose') });
    expect(opened.underWay.reached).toEqual([cedar]);
    const left = new EveningTold(planOf(3)).goTo('cedar/first/nose').next();
    left.host({ type: 'JumpTo', cue: cueId('gathering'), takesBack: cueId('cedar/first/nose') });
    expect(left.underWay.reached).toEqual([cedar]);
  });

  it('[P20] forgets the glass of a Next that Back follows, but not one that the room was led into', () => {
    const evening = new EveningTold(planOf(3, { blind: true })).goTo('ash/first/nose');
    const back = () => expect(evening.host({ type: 'GoBack', from: cueId(evening.cue) })).toBe('done');
    while (!evening.underWay.reached.includes(birch)) evening.next();
    back();
    expect(evening.underWay.reached).toEqual([ash]);
    evening.next();
    expect(evening.underWay.reached).toEqual([ash, birch]);
    evening.next();
    back();
    back();
    expect(evening.underWay.reached).toEqual([ash, birch]);
    expect(evolveAll(unopened, evening.events)).toEqual(evening.session);
  });

  /** An evening that has just come to the second glass, and by whom. */
  function atBirch(pacing: Pacing, step: (evening: EveningTold) => void): EveningTold {
    const evening = new EveningTold(planOf(3, { blind: true })).sit('ada').goTo('ash/first/nose');
    evening.host({ type: 'ChoosePacing', pacing });
    while (!evening.underWay.reached.includes(birch)) step(evening);
    return evening;
  }
  const backIn = (evening: EveningTold, seconds: number) => {
    const by = evening.underWay.timeline.at(-1)?.by;
    evening.wait(seconds);
    expect(evening.host({ type: 'GoBack', from: cueId(evening.cue) })).toBe('done');
    return { by, reached: evening.underWay.reached };
  };

  it.each([
    [0, [ash]],
    [19.999, [ash]],
    [20, [ash, birch]],
    [21, [ash, birch]],
  ])('[P20] takes a Next for a slip for 20 s, and Back after %d s accordingly', (seconds, reached) => {
    const evening = atBirch({ by: 'host' }, (told) => told.next());
    expect(backIn(evening, seconds)).toEqual({ by: 'host', reached });
  });

  it('[P20] keeps the glass that the clock brought, or the room by being ready', () => {
    const byClock = atBirch({ by: 'clock' }, (told) => {
      told.wait(1000);
      if (told.clock('ExpireCue') !== 'done') told.next();
    });
    expect(backIn(byClock, 0)).toEqual({ by: 'clock', reached: [ash, birch] });
    const byRoom = atBirch({ by: 'room', share: 1 }, (told) => {
      told.wait(1000);
      const before = told.cue;
      told.guest('ada', { type: 'GiveSignal', signal: 'ready', cue: cueId(before) });
      if (told.cue === before) told.next();
    });
    expect(backIn(byRoom, 0)).toEqual({ by: 'room', reached: [ash, birch] });
  });
});
