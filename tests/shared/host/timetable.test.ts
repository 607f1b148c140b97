import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cueId, pourId } from '../../../core/ids.ts';
import { fitAhead } from '../../../core/running-order/fit-ahead.ts';
import type { HostCommand } from '../../../core/session/command.ts';
import { aheadOf as aheadOnServer } from '../../../core/session/fitting.ts';
import { hostView, runningOrderView } from '../../../core/session/views/host.ts';
import { durationMs, epochMs, seconds } from '../../../core/units.ts';
import { aheadOf, timetableOf } from '../../../host/conduct/pace/timetable.ts';
import { previewOf } from '../../../host/conduct/pace/wished-end.ts';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { forecastOf } from '../../support/forecast.ts';
import { planOf } from '../../support/plans.ts';

/** What a host's device has been told, over the wire. */
function told(evening: EveningTold) {
  const { underWay } = evening;
  const over = <View>(view: View): View => JSON.parse(JSON.stringify(view)) as View;
  const view = over(hostView(underWay, 1));
  if (view.status !== 'under-way') throw new Error('The evening is over.');
  return { view, order: over(runningOrderView(underWay, 1)) };
}

type Step = (evening: EveningTold) => void;
const ask =
  (command: HostCommand): Step =>
  (evening) =>
    evening.host(command);
const steps = fc.array(
  fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: 1, max: 400 }).map<Step>((s) => (evening) => evening.wait(s)) },
    {
      weight: 6,
      arbitrary: fc.constant<Step>((evening) => evening.host({ type: 'Advance', from: cueId(evening.cue) })),
    },
    fc.nat(120).map<Step>((at) => (evening) => {
      const cue = evening.underWay.cues[at % evening.underWay.cues.length];
      if (cue !== undefined) evening.host({ type: 'JumpTo', cue: cue.id });
    }),
    fc.constantFrom('ash', 'cedar', 'fir').map((pour) => ask({ type: 'DropPour', pour: pourId(pour) })),
    fc
      .constantFrom<HostCommand>(
        { type: 'Hold' },
        { type: 'Resume' },
        { type: 'GiveTime', seconds: seconds(90) },
        { type: 'CallBreak', seconds: seconds(300) },
        { type: 'DropClosingPass' },
        { type: 'RestoreClosingPass' },
        { type: 'ShortenDiscussions' },
        { type: 'RestoreDiscussions' },
        { type: 'UndoFit' },
      )
      .map(ask),
    fc
      .integer({ min: -30, max: 200 })
      .map((minutes) => ask({ type: 'FitTo', endsAt: epochMs(doorsAt + minutes * 60_000) })),
  ),
  { maxLength: 30, size: 'max' },
);

describe('what a host sees ahead', () => {
  it('is what the server knows: the same forecast, and the same fit to any end, cue by cue', () => {
    let shortened = 0;
    fc.assert(
      fc.property(steps, fc.integer({ min: -60, max: 240 }), (taken, minutes) => {
        const evening = new EveningTold(planOf(6, { level: 'devotees' }));
        for (const step of taken) step(evening);
        const now = epochMs(evening.now);
        const { view, order } = told(evening);
        const ahead = aheadOf(order, view, now);
        expect(ahead).toEqual(aheadOnServer(evening.underWay, now));
        expect(timetableOf(order.cues, view, now).end).toEqual(forecastOf(evening.underWay, now).end);

        const endsAt = epochMs(doorsAt + minutes * 60_000);
        const { changes } = fitAhead(ahead, endsAt);
        const preview = previewOf(ahead, endsAt);
        const answer = evening.host({ type: 'FitTo', endsAt });
        const event = evening.events.at(-1);
        if (answer === 'done') {
          shortened += 1;
          expect(event).toMatchObject({ type: 'RunningOrderFitted', lengths: changes });
          expect(preview.is).not.toBe('stands');
          expect(preview.is).not.toBe('fits-already');
        } else {
          expect(answer).toBe('nothing-to-do');
          expect(changes).toEqual([]);
          if (preview.is === 'too-long') expect(preview.atFloors).toBe(true);
          else expect(['stands', 'fits-already']).toContain(preview.is);
        }
        // What the host was shown is what the room now has.
        const after = told(evening);
        const fitted = aheadOf(after.order, after.view, now);
        expect(['stands', 'fits-already', 'too-long']).toContain(previewOf(fitted, endsAt).is);
      }),
      { numRuns: 120 },
    );
    expect(shortened).toBeGreaterThan(20);
  });
});

describe('times on the wall clock', () => {
  const at = (evening: EveningTold) => {
    const { view, order } = told(evening);
    return timetableOf(order.cues, view, epochMs(evening.now));
  };

  it('start the next cue at the deadline of the current one', () => {
    const evening = new EveningTold();
    const { starts } = at(evening);
    expect(starts.get(cueId('gathering'))).toBe(doorsAt);
    expect(starts.get(cueId('welcome'))).toBe(doorsAt + evening.idealMs);
  });

  it('move with a cue that is over its time', () => {
    const evening = new EveningTold().wait(1000);
    expect(at(evening).starts.get(cueId('welcome'))).toBe(evening.now);
  });

  it('wait while the clock is held, and never for less than nothing', () => {
    const evening = new EveningTold().wait(100);
    evening.host({ type: 'Hold' });
    evening.wait(5000);
    expect(at(evening).starts.get(cueId('welcome'))).toBe(evening.now + 500_000);
    const over = new EveningTold().wait(700);
    over.host({ type: 'Hold' });
    over.wait(60);
    expect(at(over).starts.get(cueId('welcome'))).toBe(over.now);
  });

  it('tell when a cue was last entered, and nothing of one that was skipped', () => {
    const evening = new EveningTold().wait(5).goTo('ground-rules').wait(5).goTo('gathering').wait(5);
    evening.goTo('ground-rules');
    const { starts } = at(evening);
    expect(starts.get(cueId('gathering'))).toBe(doorsAt + 10_000);
    expect(starts.get(cueId('welcome'))).toBeUndefined();
    expect(starts.get(cueId('ground-rules'))).toBe(doorsAt + 15_000);
  });

  it('put the end into a range that grows narrower as the evening goes on', () => {
    const evening = new EveningTold();
    const width = () => {
      const { early, late } = at(evening).end;
      return late - early;
    };
    const wide = width();
    evening.goTo('elm/first/nose');
    expect(width()).toBeLessThan(wide / 2);
    evening.goTo('farewell');
    expect(width()).toBeLessThan(wide / 10);
    evening.wait(600);
    expect(width()).toBe(durationMs(0));
  });

  it('learn from this room: one that takes half as long again ends later than the plan', () => {
    const [punctual, slow] = [new EveningTold(), new EveningTold()].map((evening, index) => {
      evening.next();
      for (let cue = 0; cue < 20; cue += 1) {
        const cueNow = evening.idealMs / 1000;
        evening.wait(index === 0 ? cueNow : cueNow * 1.5).next();
      }
      return at(evening).end.likely - evening.now;
    });
    expect(slow).toBeGreaterThan((punctual ?? 0) * 1.2);
  });

  it('go on where the host stands on a glass that was dropped', () => {
    const evening = new EveningTold().goTo('ash/first/nose');
    evening.host({ type: 'DropPour', pour: pourId('birch') });
    evening.goTo('birch/first/nose');
    const { starts } = at(evening);
    expect(starts.get(cueId('cedar/first/swirl'))).toBe(evening.now + evening.idealMs);
    expect(starts.get(cueId('welcome'))).toBeUndefined();
  });
});
