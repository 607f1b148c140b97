import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { epochMs } from '../../../core/units.ts';
import { createServerClock, samplesOfNow } from '../../../shared/follower/server-clock.ts';

/** A device whose clocks a test turns, and a server that is `ahead` of its steady clock. */
function device(ahead: number) {
  let steady = 1000;
  let wall = 5_000_000;
  const clock = createServerClock({ steady: () => steady, wall: () => wall });
  return {
    clock,
    pass(ms: number, asleep = false): void {
      wall += ms;
      if (!asleep) steady += ms;
    },
    setWall(by: number): void {
      wall += by;
    },
    async probe(out: number, back: number): Promise<boolean> {
      return clock.probe(async () => {
        this.pass(out);
        const server = epochMs(steady + ahead);
        this.pass(back);
        return { received: server, sent: server };
      });
    },
    serverSleeps(ms: number): void {
      ahead += ms;
    },
    truth: () => steady + ahead,
    wall: () => wall,
  };
}

describe('the server’s time on a device', () => {
  it('is the device’s own until a probe has come back', async () => {
    const phone = device(9_000_000);
    expect(phone.clock.known.peek()).toBe(false);
    expect(phone.clock.now()).toBe(phone.wall());
    await phone.probe(0, 0);
    expect(phone.clock.known.peek()).toBe(true);
    expect(phone.clock.now()).toBe(phone.truth());
  });

  it('errs by no more than half the best round trip, whatever the network does', async () => {
    const trip = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }));
    await fc.assert(
      fc.asyncProperty(fc.array(trip, { minLength: 1, maxLength: 3 }), async (trips) => {
        const phone = device(123_456);
        for (const [out, back] of trips) await phone.probe(out, back);
        const worst = Math.max(...trips.map(([out, back]) => Math.abs(out - back) / 2));
        expect(Math.abs(phone.clock.now() - phone.truth())).toBeLessThanOrEqual(worst + 1e-6);
      }),
    );
  });

  it('learns how fast the two clocks part, and goes on at that rate between rare probes', async () => {
    const phone = device(123_456);
    // 40 ms in 1,000 s, as two common crystals may part; a mean of what was measured would be some 18 ms behind.
    for (let count = 0; count < 60; count += 1) {
      await phone.probe(5 + (count % 3), 6);
      phone.pass(15_000);
      phone.serverSleeps(0.6);
    }
    expect(Math.abs(phone.clock.now() - phone.truth())).toBeLessThan(2);
  });

  it('[P17] believes one probe when the server has slept, for two samples that share no moment cannot both be right', async () => {
    const phone = device(50);
    for (let count = 0; count < 40; count += 1) await phone.probe(30 + count, 30);
    phone.serverSleeps(600_000);
    await phone.probe(200, 20);
    expect(Math.abs(phone.clock.now() - phone.truth())).toBeLessThanOrEqual(110);
  });

  it('hardly minds slow probes when there are faster ones', async () => {
    const phone = device(50);
    await phone.probe(500, 0);
    for (let count = 0; count < 3; count += 1) await phone.probe(10, 10);
    expect(phone.clock.now()).toBeCloseTo(phone.truth(), 2);
    expect(phone.clock.roundTrip.peek()).toBe(20);
  });

  it('judges the network by the latest probes, so that a change of it is noticed', async () => {
    const phone = device(50);
    await phone.probe(1, 1);
    for (let count = 0; count < samplesOfNow; count += 1) await phone.probe(40, 40);
    expect(phone.clock.roundTrip.peek()).toBe(80);
  });

  it('forgets a stall within two minutes, however rare probes are', async () => {
    const phone = device(50);
    await phone.probe(1000, 1000);
    const told: (number | null)[] = [];
    for (let count = 0; count < 8; count += 1) {
      phone.pass(15_000);
      await phone.probe(10, 10);
      await phone.clock.probe(async ({ reach }) => {
        told.push(reach);
        const server = epochMs(phone.truth());
        return { received: server, sent: server };
      });
    }
    expect(told[0]).toBeGreaterThan(1000);
    expect(told.at(-1)).toBeLessThan(30);
  });

  it('does not move when somebody sets the device’s clock', async () => {
    const phone = device(50);
    await phone.probe(10, 10);
    phone.setWall(3_600_000);
    expect(phone.clock.now()).toBe(phone.truth());
  });

  it('knows that it has slept, and forgets what it measured before', async () => {
    const phone = device(50);
    await phone.probe(10, 10);
    phone.pass(5000);
    expect(phone.clock.slept()).toBe(false);
    phone.pass(600_000, true);
    expect(phone.clock.slept()).toBe(true);
    expect(phone.clock.known.peek()).toBe(false);
    expect(phone.clock.now()).toBe(phone.wall());
  });

  it('says so when no answer comes', async () => {
    const { clock } = device(0);
    expect(await clock.probe(() => Promise.reject(new Error('timed out')))).toBe(false);
    expect(clock.known.peek()).toBe(false);
  });
});
