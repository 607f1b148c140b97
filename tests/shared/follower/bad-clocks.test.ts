import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stageView } from '../../../core/session/views/stage.ts';
import { epochMs } from '../../../core/units.ts';
import { createServerClock } from '../../../shared/follower/server-clock.ts';
import { createStageGate } from '../../../shared/follower/stage-gate.ts';
import { timeLeft } from '../../../shared/ui/time-left.ts';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { handClock } from './hand-clock.ts';

const minutes = 60_000;

/** A phone whose wall clock is wrong by `wrong` ms, 20 ms from a server whose time is the truth. */
function phone(wrong: number) {
  const time = handClock(doorsAt);
  let wall = wrong;
  let asleep = 0;
  const clock = createServerClock({ steady: () => time.now() - asleep, wall: () => time.now() + wall });
  const gate = createStageGate({ now: clock.now, after: time.after });
  const evening = new EveningTold();
  evening.lead = 200;
  const probe = () =>
    clock.probe(async () => {
      await time.pass(20);
      const server = epochMs(time.now());
      await time.pass(20);
      return { received: server, sent: server };
    });
  const receive = () => gate.receive(stageView(evening.underWay, evening.events.length));
  return {
    clock,
    evening,
    time,
    probe,
    receive,
    setWall(by: number) {
      wall += by;
    },
    /** Half a minute or half an hour in a pocket: the steady clock stands still, and no timer fires. */
    sleep(ms: number) {
      asleep += ms;
      return time.pass(ms);
    },
    /** The host taps Next on a server whose time is the truth. */
    next() {
      evening.now = time.now();
      evening.next();
      receive();
    },
    shown: () => {
      const stage = gate.stage.peek();
      return stage?.status === 'under-way' ? String(stage.cue.id) : undefined;
    },
    left: () => {
      const stage = gate.stage.peek();
      if (stage?.status !== 'under-way' || stage.clock.kind !== 'running') throw new Error('Nothing runs.');
      return timeLeft({ status: 'running', ...stage.clock }, clock.now()).remaining;
    },
    truth: () => {
      const { clock: running } = evening.underWay;
      return running.kind === 'running' ? running.endsAt - time.now() : Number.NaN;
    },
  };
}

describe('a phone with a bad clock', () => {
  it('[F4] ten minutes off turns and counts down with all others', async () => {
    for (const wrong of [-10 * minutes, 10 * minutes]) {
      const one = phone(wrong);
      await one.probe();
      one.receive();
      one.next();
      await one.time.pass(199);
      expect(one.shown()).toBe('gathering');
      await one.time.pass(1);
      expect(one.shown()).toBe('welcome');
      expect(Math.abs(one.left() - one.truth())).toBeLessThan(2);
    }
  });

  it('[F4] never holds a cue back for long, however wrong it is before the first probe has come back', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: -20 * minutes, max: 20 * minutes }), async (wrong) => {
        const one = phone(wrong);
        one.receive();
        one.next();
        await one.time.pass(2200);
        expect(one.shown()).toBe('welcome');
      }),
      { numRuns: 50 },
    );
  });

  it('goes on in step when the clock jumps in mid-session, before and after it is probed again', async () => {
    const one = phone(0);
    await one.probe();
    one.receive();
    one.setWall(47 * minutes);
    expect(Math.abs(one.left() - one.truth())).toBeLessThan(2);
    expect(one.clock.slept()).toBe(true);
    await one.probe();
    one.next();
    await one.time.pass(200);
    expect(one.shown()).toBe('welcome');
    expect(Math.abs(one.left() - one.truth())).toBeLessThan(2);
  });

  it('[F2] is level after half an hour in a pocket, and counts down what is left and not what it remembers', async () => {
    const one = phone(-10 * minutes);
    await one.probe();
    one.receive();
    await one.sleep(30 * minutes);
    one.evening.now = one.time.now();
    one.evening.next(3);
    expect(one.clock.slept()).toBe(true);
    await one.probe();
    one.receive();
    await one.time.pass(200);
    expect(one.shown()).toBe(one.evening.cue);
    expect(Math.abs(one.left() - one.truth())).toBeLessThan(2);
  });
});
