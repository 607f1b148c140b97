import { describe, expect, it } from 'vitest';
import { rehearse } from '../../../core/running-order/rehearsal-report.ts';
import { secondsUntil } from '../../../host/plan/figures/seconds-until.ts';
import { createRehearsalRoom, type Player } from '../../../host/plan/rehearsal/rehearsal-room.ts';
import { seededRandom } from '../../../host/plan/rehearsal/seeded-random.ts';
import type { FromWorker, ToWorker } from '../../../host/plan/rehearsal/worker-messages.ts';
import { planOf } from '../../support/plans.ts';

/** A stand-in for a worker, which says what the test says. */
class Told implements Player {
  onmessage: Player['onmessage'] = null;
  onerror: Player['onerror'] = null;
  ended = false;
  readonly asked: ToWorker[] = [];
  postMessage(ask: ToWorker): void {
    this.asked.push(ask);
  }
  terminate(): void {
    this.ended = true;
  }
  says(data: FromWorker): void {
    this.onmessage?.({ data });
  }
}

const report = () => {
  const playing = rehearse({ plan: planOf(1), evenings: 2, wished: 3600 }, seededRandom(1));
  for (;;) {
    const step = playing.next();
    if (step.done === true) return step.value;
  }
};

function room() {
  const hired: Told[] = [];
  const rehearsal = createRehearsalRoom(() => {
    const player = new Told();
    hired.push(player);
    return player;
  });
  return { rehearsal, hired, is: () => rehearsal.state.value.is };
}

describe('a rehearsal beside the page', () => {
  it('tells how far it is, then what came of it, and lets its worker go', () => {
    const { rehearsal, hired } = room();
    const plan = planOf(3);
    rehearsal.start(plan, 5400);
    expect(hired[0]?.asked).toMatchObject([{ plan, wished: 5400 }]);
    hired[0]?.says({ is: 'playing', done: 40 });
    expect(rehearsal.state.value).toMatchObject({ is: 'playing', done: 40 });
    const whole = report();
    hired[0]?.says({ is: 'report', report: whole });
    expect(rehearsal.state.value).toEqual({ is: 'reported', report: whole, plan });
    expect(hired[0]?.ended).toBe(true);
  });

  it('is stopped at once, and again when another one begins', () => {
    const { rehearsal, hired, is } = room();
    rehearsal.start(planOf(3), 1);
    rehearsal.cancel();
    expect([is(), hired[0]?.ended]).toEqual(['idle', true]);
    rehearsal.start(planOf(3), 1);
    rehearsal.start(planOf(2), 1);
    expect(hired.map(({ ended }) => ended)).toEqual([true, true, false]);
  });

  it('says so when it fails, also where there are no workers', () => {
    const { rehearsal, hired, is } = room();
    rehearsal.start(planOf(3), 1);
    hired[0]?.onerror?.();
    expect([is(), hired[0]?.ended]).toEqual(['failed', true]);
    const without = createRehearsalRoom(() => {
      throw new Error('no workers here');
    });
    without.start(planOf(3), 1);
    expect(without.state.value.is).toBe('failed');
  });
});

describe('the seconds until a time on the wall', () => {
  const from = (iso: string, time: string) => secondsUntil(time, Date.parse(iso), 'Europe/Vienna');

  it('are those to the next such time, after midnight too', () => {
    expect(from('2031-06-06T19:00:00+02:00', '21:30')).toBe(2.5 * 3600);
    expect(from('2031-06-06T23:00:00+02:00', '00:15')).toBe(75 * 60);
    expect(from('2031-06-06T19:00:00+02:00', '18:00')).toBe(23 * 3600);
    expect(from('2031-06-06T19:00:00+02:00', '19:00')).toBe(0);
    expect(from('2031-06-06T19:00:00+02:00', '')).toBeUndefined();
  });

  it('are those that pass on nights when the clocks are changed', () => {
    // Central European Time: 26 October 2031 back at 03:00 summer time, 30 March 2031 forward at 02:00 winter time.
    expect(from('2031-10-25T23:30:00+02:00', '03:30')).toBe(5 * 3600);
    expect(from('2031-10-25T23:30:00+02:00', '02:30')).toBe(3 * 3600);
    expect(from('2031-03-29T23:30:00+01:00', '03:30')).toBe(3 * 3600);
    expect(from('2031-03-29T23:30:00+01:00', '02:30')).toBeUndefined();
  });
});
