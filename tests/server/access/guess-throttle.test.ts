import { describe, expect, it } from 'vitest';
import { GuessThrottle } from '../../../server/access/guess-throttle.ts';
import { ManualClock } from '../support/manual-clock.ts';

function aThrottle() {
  const clock = new ManualClock();
  return { clock, throttle: new GuessThrottle(clock) };
}

const wrong = (throttle: GuessThrottle, address: string, times: number): (number | undefined)[] =>
  Array.from({ length: times }, () => throttle.failed(address));

describe('wrong codes from one address', () => {
  it('cost nothing five times; then each doubles the pause, to a minute at most', async () => {
    const { clock, throttle } = aThrottle();
    expect(wrong(throttle, 'here', 5)).toEqual(Array(5).fill(undefined));
    const pauses: (number | undefined)[] = [];
    for (let time = 0; time < 9; time += 1) {
      const pause = throttle.failed('here');
      pauses.push(pause);
      await clock.advance((pause ?? 0) * 1000);
    }
    expect(pauses).toEqual([1, 2, 4, 8, 16, 32, 60, 60, 60]);
  });

  it('do not lengthen the pause in which they come, and are told what is left of it in whole seconds', async () => {
    const { clock, throttle } = aThrottle();
    wrong(throttle, 'here', 8);
    expect(throttle.failed('here')).toBe(1);
    await clock.advance(1000);
    expect(throttle.failed('here')).toBe(2);
    await clock.advance(500);
    expect(throttle.failed('here')).toBe(2);
    await clock.advance(1499);
    expect(throttle.failed('here')).toBe(1);
    await clock.advance(1);
    expect(throttle.failed('here')).toBe(4);
  });

  it('are forgotten after ten minutes without one, to the millisecond', async () => {
    const { clock, throttle } = aThrottle();
    wrong(throttle, 'here', 6);
    await clock.advance(10 * 60_000 - 1);
    expect(throttle.failed('here')).toBe(2);
    await clock.advance(10 * 60_000);
    expect(wrong(throttle, 'here', 6)).toEqual([...Array(5).fill(undefined), 1]);
  });
});

describe('wrong codes from everywhere', () => {
  it('cost nothing fifty times; then even a newcomer is told to wait', async () => {
    const { clock, throttle } = aThrottle();
    for (let address = 0; address < 50; address += 1) {
      expect(throttle.failed(`address-${address}`)).toBeUndefined();
    }
    expect(throttle.failed('the fifty-first')).toBe(1);
    await clock.advance(1000);
    expect(throttle.failed('the fifty-second')).toBe(2);
    await clock.advance(10 * 60_000);
    expect(throttle.failed('the fifty-third')).toBeUndefined();
  });
});

describe('turns', () => {
  /** Whether the next code from there is looked up without waiting. */
  async function atOnce(throttle: GuessThrottle, address: string): Promise<boolean> {
    let passed = false;
    void throttle.turn(address).then((may) => {
      passed = may;
    });
    await new Promise((resolve) => setImmediate(resolve));
    return passed;
  }

  it('are not taken before the hundredth wrong code, nor ten minutes after the last', async () => {
    const { clock, throttle } = aThrottle();
    wrong(throttle, 'here', 99);
    expect([await atOnce(throttle, 'here'), await atOnce(throttle, 'here')]).toEqual([true, true]);
    throttle.failed('here');
    expect([await atOnce(throttle, 'here'), await atOnce(throttle, 'here')]).toEqual([true, false]);
    await clock.advance(10 * 60_000 - 1);
    expect([await atOnce(throttle, 'here'), await atOnce(throttle, 'here')]).toEqual([true, false]);
    await clock.advance(1);
    expect([await atOnce(throttle, 'here'), await atOnce(throttle, 'here')]).toEqual([true, true]);
  });

  it('are remembered for the ten thousand addresses that guessed last', async () => {
    const { throttle } = aThrottle();
    wrong(throttle, 'here', 100);
    wrong(throttle, 'there', 100);
    throttle.failed('here');
    for (let other = 0; other < 9998; other += 1) throttle.failed(`address-${other}`);
    expect([await atOnce(throttle, 'there'), await atOnce(throttle, 'there')]).toEqual([true, false]);
    throttle.failed('one more');
    expect([await atOnce(throttle, 'there'), await atOnce(throttle, 'there')]).toEqual([true, true]);
    expect([await atOnce(throttle, 'here'), await atOnce(throttle, 'here')]).toEqual([true, false]);
  });
});

describe('whoever guesses codes', () => {
  it('has free tries again after ten quiet minutes', async () => {
    const clock = new ManualClock();
    const throttle = new GuessThrottle(clock);
    for (let tries = 0; tries < 20; tries += 1) throttle.failed('here');
    expect(throttle.failed('here')).toBeGreaterThan(0);
    expect(throttle.failed('there')).toBeUndefined();
    await clock.advance(10 * 60_000);
    expect(throttle.failed('here')).toBeUndefined();
  });

  it('gets five tries in a second after a hundred wrong ones, whatever it does, and others do not wait', async () => {
    const clock = new ManualClock();
    const throttle = new GuessThrottle(clock);
    for (let tries = 0; tries < 100; tries += 1) throttle.failed('here');
    let passed = 0;
    let refused = 0;
    for (let tries = 0; tries < 500; tries += 1) {
      void throttle.turn('here').then((may) => {
        if (may) passed += 1;
        else refused += 1;
      });
    }
    expect(await throttle.turn('there')).toBe(true);
    await clock.advance(0);
    expect(passed).toBe(1);
    await clock.advance(2000);
    expect(passed).toBe(11);
    await clock.advance(60_000);
    expect(passed).toBe(51);
    expect(refused).toBe(449);
    expect(await throttle.turn('here')).toBe(true);
  });

  it('is remembered among ten thousand others, and not for ever', () => {
    const throttle = new GuessThrottle(new ManualClock());
    for (let tries = 0; tries < 50; tries += 1) throttle.failed('here');
    for (let other = 0; other < 20_000; other += 1) throttle.failed(`address-${other}`);
    // Forgotten alone, but all together there are too many.
    expect(throttle.failed('here')).toBeGreaterThan(0);
  });
});
