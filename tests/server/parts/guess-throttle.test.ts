import { describe, expect, it } from 'vitest';
import { GuessThrottle } from '../../../server/access/guess-throttle.ts';
import { ManualClock } from '../support/manual-clock.ts';

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
