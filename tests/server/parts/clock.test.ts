import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { epochMs } from '../../../core/units.ts';
import { type Clock, machineTime, steadyClock } from '../../../server/clock.ts';

const began = 1_900_000_000_000;
const day = 24 * 3600 * 1000;
const hour = 3_600_000;

/** A machine whose two clocks a test turns: time passes on both, sleep and people turn only the one on the wall. */
function aMachine() {
  const hands = { wall: began, steady: 5000 };
  return {
    time: { ...machineTime, wall: () => hands.wall, steady: () => hands.steady },
    pass(ms: number) {
      hands.wall += ms;
      hands.steady += ms;
      vi.advanceTimersByTime(ms);
    },
    set(by: number) {
      hands.wall += by;
    },
  };
}

let machine: ReturnType<typeof aMachine>;
let clock: Clock;
beforeEach(() => {
  vi.useFakeTimers();
  machine = aMachine();
  clock = steadyClock(machine.time);
});
afterEach(() => {
  vi.useRealTimers();
});

describe('the time of the server', () => {
  it('goes with the wall clock while nobody sets it', () => {
    for (let turn = 1; turn <= 50; turn += 1) {
      machine.pass(777);
      expect(clock.now()).toBe(began + turn * 777);
    }
  });

  it('[P17] does not see that the wall clock is set back, and rings after as long as it was told', () => {
    const run = vi.fn();
    clock.at(epochMs(clock.now() + 60_000), run);
    machine.pass(1000);
    machine.set(-hour);
    expect(clock.now()).toBe(began + 999);
    machine.pass(58_000);
    expect(run).not.toHaveBeenCalled();
    // Slower by at most 500 parts per million, until both say the same again.
    machine.pass(1000 + 31);
    expect(run).toHaveBeenCalledOnce();
  });

  it('[P17] makes a second of difference good within the hour, without a jump', () => {
    for (const by of [-1000, 1000]) {
      machine.set(by);
      const before = clock.now();
      machine.pass(1000);
      expect(Math.abs(clock.now() - before - 1000)).toBeLessThanOrEqual(1);
      for (let minute = 0; minute < 40; minute += 1) {
        machine.pass(60_000);
        clock.now();
      }
      expect(Math.abs(clock.now() - machine.time.wall())).toBeLessThanOrEqual(1);
    }
  });

  it('[P17] goes forward at once when the machine has slept, and rings for what fell due', () => {
    const run = vi.fn();
    clock.at(epochMs(clock.now() + hour), run);
    machine.pass(1000);
    machine.set(5 * hour);
    expect(clock.now()).toBe(began + 1000 + 5 * hour);
    machine.pass(10_000);
    expect(run).toHaveBeenCalledOnce();
  });

  it('[P17] begins with the last stamp where the wall clock has fallen behind it', () => {
    const last = epochMs(began + 2 * hour);
    const later = clock.notBefore(last);
    expect(later.now()).toBe(last);
    machine.pass(10_000);
    expect(later.now()).toBe(last + 10_000 - 5);
    expect(clock.notBefore(epochMs(began - hour)).now()).toBe(began + 10_000);
  });

  it('[P17] never says less than before, whatever is done to the wall clock', () => {
    const step = fc.record({ pass: fc.nat(100_000), set: fc.integer({ min: -2 * day, max: 2 * day }) });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), fc.integer({ min: -day, max: day }), (steps, from) => {
        const turned = aMachine();
        const any = steadyClock(turned.time, began + from);
        let said = any.now();
        for (const { pass, set } of steps) {
          turned.set(set);
          expect(any.now()).toBeGreaterThanOrEqual(said);
          said = any.now();
          turned.pass(pass);
          // Forward at least as far as time has passed, but for the slewing.
          expect(any.now()).toBeGreaterThanOrEqual(said + Math.floor(pass * (1 - 500e-6)));
          said = any.now();
        }
      }),
    );
  });
});

describe('its alarms', () => {
  it('ring at their time and never before, also after weeks', () => {
    for (const wait of [1, 1000, 10_001, 24 * day, 25 * day]) {
      const alarms = steadyClock();
      const run = vi.fn();
      alarms.at(epochMs(alarms.now() + wait), run);
      vi.advanceTimersByTime(wait - 1);
      expect(run).not.toHaveBeenCalled();
      vi.advanceTimersByTime(1);
      expect(run).toHaveBeenCalledOnce();
    }
  });

  it('ring once for a time that has passed', () => {
    const run = vi.fn();
    clock.at(epochMs(5), run);
    vi.advanceTimersByTime(1);
    expect(run).toHaveBeenCalledOnce();
  });

  it('do not ring when they were cancelled, not even weeks later', () => {
    const alarms = steadyClock();
    const run = vi.fn();
    const cancel = alarms.at(epochMs(alarms.now() + 30 * day), run);
    vi.advanceTimersByTime(20 * day);
    cancel();
    vi.advanceTimersByTime(20 * day);
    expect(run).not.toHaveBeenCalled();
  });
});
