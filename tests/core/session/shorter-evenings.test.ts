import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cueId, pourId } from '../../../core/ids.ts';
import type { HostCommand } from '../../../core/session/command.ts';
import { aheadOf, fitTo } from '../../../core/session/fitting.ts';
import { playable } from '../../../core/session/position.ts';
import { runningOrderView } from '../../../core/session/views/host.ts';
import { epochMs, seconds } from '../../../core/units.ts';
import { EveningTold } from '../../support/evening.ts';
import { forecastOf } from '../../support/forecast.ts';
import { planOf } from '../../support/plans.ts';

const evening = () =>
  new EveningTold(planOf(6, { level: 'devotees', discussion: 'each-flight' })).goTo('birch/first/nose');
const likelyEnd = (told: EveningTold) => forecastOf(told.underWay, epochMs(told.now)).end.likely;
const sooner = (told: EveningTold, minutes: number) => epochMs(likelyEnd(told) - minutes * 60_000);
const lengths = (told: EveningTold) =>
  told.underWay.cues.map(({ id, ideal, floor }) => ({ id, ideal, floor }));
const played = (told: EveningTold) =>
  playable(told.underWay).map((index) => String(told.underWay.cues[index]?.id));

describe('[P13] fitting again', () => {
  it('gives time back for a later end, and all of it when nothing needs to be shortened any more', () => {
    const told = evening();
    const whole = lengths(told);
    const [soon, later] = [sooner(told, 20), sooner(told, 10)];
    expect(told.host({ type: 'FitTo', endsAt: soon })).toBe('done');
    const tight = aheadOf(told.underWay, epochMs(told.now)).remaining;
    expect(told.host({ type: 'FitTo', endsAt: later })).toBe('done');
    const looser = aheadOf(told.underWay, epochMs(told.now)).remaining;
    const total = (cues: typeof tight) => cues.reduce((sum, { ideal }) => sum + ideal, 0);
    expect(total(looser)).toBeGreaterThan(total(tight) + 300);
    // The same as if it had been fitted to the later end at once.
    const atOnce = evening();
    atOnce.host({ type: 'FitTo', endsAt: later });
    expect(lengths(told)).toEqual(lengths(atOnce));
    expect(told.host({ type: 'FitTo', endsAt: epochMs(likelyEnd(told) + 3_600_000) })).toBe('done');
    expect(lengths(told)).toEqual(whole);
    expect(told.host({ type: 'UndoFit' })).toBe('not-fitted');
  });

  it('is undone to the lengths before the first one, over a second and over cues that are behind by then', () => {
    const told = evening();
    const whole = lengths(told);
    told.host({ type: 'FitTo', endsAt: sooner(told, 20) });
    told.goTo('cedar/first/nose').host({ type: 'FitTo', endsAt: sooner(told, 5) });
    expect(told.host({ type: 'UndoFit' })).toBe('done');
    expect(lengths(told)).toEqual(whole);
  });

  it('never takes back what the host has set by hand in the meantime', () => {
    const told = evening();
    told.host({ type: 'FitTo', endsAt: sooner(told, 20) });
    told.host({ type: 'EditCue', cue: cueId('fir/first/nose'), seconds: seconds(200) });
    told.host({ type: 'UndoFit' });
    expect(lengths(told).find(({ id }) => id === 'fir/first/nose')?.ideal).toBe(200);
  });

  it('forgets of it only what the host has set by hand: the rest is still undone', () => {
    const told = evening();
    const whole = lengths(told);
    told.host({ type: 'FitTo', endsAt: sooner(told, 20) });
    const fitted = lengths(told);
    told.host({ type: 'EditCue', cue: cueId('fir/first/nose'), seconds: seconds(200) });
    expect(told.host({ type: 'UndoFit' })).toBe('done');
    expect(lengths(told).filter(({ id }) => id !== 'fir/first/nose')).toEqual(
      whole.filter(({ id }) => id !== 'fir/first/nose'),
    );
    expect(fitted).not.toEqual(whole);
    expect(told.host({ type: 'UndoFit' })).toBe('not-fitted');
  });

  it('is not there to be undone once every length that it changed was set by hand', () => {
    const told = evening();
    told.host({ type: 'FitTo', endsAt: sooner(told, 20) });
    for (const { cue } of told.underWay.fitted ?? []) {
      expect(told.underWay.fitted).not.toBeNull();
      told.host({ type: 'EditCue', cue, seconds: seconds(200) });
    }
    expect(told.underWay.fitted).toBeNull();
    expect(told.host({ type: 'UndoFit' })).toBe('not-fitted');
  });

  it('keeps the wished end in sight, also when it is undone [P16]', () => {
    const told = evening();
    const endsAt = sooner(told, 15);
    told.host({ type: 'FitTo', endsAt });
    expect(told.underWay.wishedEnd).toBe(endsAt);
    told.host({ type: 'UndoFit' });
    expect(told.underWay.wishedEnd).toBe(endsAt);
    expect(told.host({ type: 'WishEnd', endsAt })).toBe('nothing-to-do');
    expect(told.host({ type: 'WishEnd', endsAt: null })).toBe('done');
    expect(told.underWay.wishedEnd).toBeNull();
  });
});

describe('[P14] leaving out the closing passes', () => {
  it('leaves every one of them out and puts them back, and keeps the rest of the order', () => {
    const told = evening();
    const order = played(told);
    expect(told.host({ type: 'DropClosingPass' })).toBe('done');
    expect(played(told)).toEqual(order.filter((id) => !id.includes('/closing/')));
    expect(told.cue).toBe('birch/first/nose');
    expect(told.host({ type: 'DropClosingPass' })).toBe('already-dropped');
    expect(told.host({ type: 'RestoreClosingPass' })).toBe('done');
    expect(played(told)).toEqual(order);
    expect(told.host({ type: 'RestoreClosingPass' })).toBe('not-dropped');
  });

  it('moves a room that is in one on to the water', () => {
    const told = evening().goTo('birch/closing/review');
    expect(told.host({ type: 'DropClosingPass' })).toBe('done');
    expect(told.cue).toBe('birch/water');
  });

  it('is asked for in the very last of them too, by the host', () => {
    const told = evening();
    const last = told.underWay.cues.findLast((cue) => cue.kind === 'step' && cue.pass === 'closing');
    told.goTo(last?.id ?? 'there is one');
    expect(told.host({ type: 'DropClosingPass' })).toBe('done');
    expect(told.events.slice(-2)).toEqual([
      { type: 'ClosingPassDropped' },
      { type: 'CueEntered', cue: 'fir/water', at: told.now, by: 'host' },
    ]);
  });

  it('has nothing to leave out where the crowd has none, or when the last one is behind', () => {
    const none = new EveningTold(planOf(3, { level: 'newcomers' }));
    expect(none.host({ type: 'DropClosingPass' })).toBe('nothing-to-do');
    const late = evening().goTo('farewell');
    expect(late.host({ type: 'DropClosingPass' })).toBe('nothing-to-do');
  });
});

describe('[P15] cutting the discussions to a minute', () => {
  it('touches only those to come, and restores ideal and floor to the second', () => {
    const told = evening().goTo('flight-1/discussion');
    const whole = lengths(told);
    expect(told.host({ type: 'ShortenDiscussions' })).toBe('done');
    const cut = told.underWay.cues.filter((cue) => cue.kind === 'discussion');
    expect(cut.map(({ ideal, floor }) => [ideal, floor])).toEqual([
      [480, 180],
      [60, 60],
    ]);
    expect(told.host({ type: 'ShortenDiscussions' })).toBe('nothing-to-do');
    expect(told.host({ type: 'RestoreDiscussions' })).toBe('done');
    expect(lengths(told)).toEqual(whole);
    expect(told.host({ type: 'RestoreDiscussions' })).toBe('nothing-to-do');
  });

  it('leaves no trace after any mixture of shortening, fitting and undoing [P13]', () => {
    const asks = fc.array(
      fc.constantFrom<HostCommand['type'] | number>(
        'ShortenDiscussions',
        'RestoreDiscussions',
        'UndoFit',
        5,
        15,
        30,
        600,
      ),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(asks, (list) => {
        const told = evening();
        const whole = lengths(told);
        const end = likelyEnd(told);
        for (const each of list) {
          if (typeof each === 'number') told.host({ type: 'FitTo', endsAt: epochMs(end - each * 60_000) });
          else told.host({ type: each } as HostCommand);
          for (const cue of told.underWay.cues) expect(cue.ideal).toBeGreaterThanOrEqual(cue.floor);
        }
        told.host({ type: 'UndoFit' });
        told.host({ type: 'RestoreDiscussions' });
        expect(lengths(told)).toEqual(whole);
      }),
      { numRuns: 60 },
    );
  });

  it('stays a minute through a fitting that would have room for more', () => {
    const told = evening();
    told.host({ type: 'FitTo', endsAt: sooner(told, 20) });
    told.host({ type: 'ShortenDiscussions' });
    told.host({ type: 'FitTo', endsAt: epochMs(likelyEnd(told) + 7_200_000) });
    for (const cue of told.underWay.cues) if (cue.kind === 'discussion') expect(cue.ideal).toBe(60);
  });
});

describe('an end that cannot be reached', () => {
  it('says by how much, and what is left out makes up for it', () => {
    const told = evening();
    const endsAt = sooner(told, 55);
    const over = () => fitTo(told.underWay, endsAt, epochMs(told.now)).over;
    const most = over();
    expect(most).toBeGreaterThan(0);
    told.host({ type: 'DropClosingPass' });
    const withoutClosing = over();
    expect(withoutClosing).toBeLessThan(most);
    told.host({ type: 'ShortenDiscussions' });
    const shortTalks = over();
    expect(shortTalks).toBeLessThan(withoutClosing);
    told.host({ type: 'DropPour', pour: pourId('fir') });
    expect(over()).toBeLessThan(shortTalks);
  });
});

describe('what is ahead of the room', () => {
  const from = (told: EveningTold) => {
    const { from: start, current } = aheadOf(told.underWay, epochMs(told.now));
    return start + Math.round(1000 * (current?.ideal ?? 0));
  };

  it('begins when the time of the cue is over, and now when it has been over for long', () => {
    const told = evening();
    expect(from(told)).toBe(told.now + told.idealMs);
    told.wait(10);
    expect(from(told)).toBe(told.now + told.idealMs - 10_000);
    expect(from(told.wait(600))).toBe(told.now);
  });

  it('moves with the time while the clock is held', () => {
    const told = evening().wait(10);
    told.host({ type: 'Hold' });
    expect(from(told.wait(300))).toBe(told.now + told.idealMs - 10_000);
    const late = evening().wait(600);
    late.host({ type: 'Hold' });
    expect(from(late.wait(60))).toBe(late.now);
  });
});

describe('a fitting that is undone', () => {
  it('[P13, P15] leaves a discussion at the minute to which it was cut, until that is undone too', () => {
    const told = evening();
    const whole = lengths(told);
    const talks = () =>
      told.underWay.cues.flatMap((cue) => (cue.kind === 'discussion' ? [cue.ideal as number] : []));
    told.host({ type: 'FitTo', endsAt: sooner(told, 20) });
    expect(talks()).not.toContain(480);
    told.host({ type: 'ShortenDiscussions' });
    told.host({ type: 'UndoFit' });
    expect(talks()).toEqual([60, 60]);
    expect(lengths(told).filter(({ id }) => !id.endsWith('/discussion'))).toEqual(
      whole.filter(({ id }) => !id.endsWith('/discussion')),
    );
    told.host({ type: 'RestoreDiscussions' });
    expect(lengths(told)).toEqual(whole);
  });
});

describe('a discussion that was cut to a minute and then set by hand', () => {
  it('[P15] keeps what was set when the others get their time back', () => {
    const told = evening();
    const talks = () =>
      told.underWay.cues.flatMap((cue) => (cue.kind === 'discussion' ? [[String(cue.id), cue.ideal]] : []));
    expect(talks()).toEqual([
      ['flight-1/discussion', 480],
      ['flight-2/discussion', 480],
    ]);
    told.host({ type: 'ShortenDiscussions' });
    told.host({ type: 'EditCue', cue: cueId('flight-1/discussion'), seconds: seconds(240) });
    expect(told.underWay.shortTalks.map(({ cue }) => String(cue))).toEqual(['flight-2/discussion']);
    expect(told.host({ type: 'RestoreDiscussions' })).toBe('done');
    expect(talks()).toEqual([
      ['flight-1/discussion', 240],
      ['flight-2/discussion', 480],
    ]);
  });

  it('[P15] cuts nothing but discussions', () => {
    const told = evening();
    told.host({ type: 'ShortenDiscussions' });
    expect(told.events.at(-1)).toEqual({
      type: 'DiscussionsShortened',
      cues: ['flight-1/discussion', 'flight-2/discussion'],
      to: 60,
    });
  });

  it('[P13] starts a new fitting from its minute, and every other from its whole length', () => {
    const told = evening();
    told.host({ type: 'FitTo', endsAt: sooner(told, 20) });
    const fitted = (told.underWay.fitted ?? []).map(({ cue }) => String(cue));
    const talks = fitted.filter((cue) => cue.endsWith('/discussion'));
    expect(talks).not.toEqual([]);
    told.host({ type: 'ShortenDiscussions' });
    expect(runningOrderView(told.underWay, 1).unfitted.map(({ cue }) => String(cue))).toEqual(
      fitted.filter((cue) => !talks.includes(cue)),
    );
  });
});
