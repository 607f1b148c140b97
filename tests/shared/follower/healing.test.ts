import { describe, expect, it } from 'vitest';
import { createHealing } from '../../../shared/follower/healing.ts';
import { seededRandom } from '../../support/seeded-random.ts';
import { handClock } from './hand-clock.ts';

type Network =
  /** Nothing arrives, and nobody is told. */
  | 'hole'
  /** The machine answers, and no server listens. */
  | 'restarting'
  | 'fair'
  /** Requests are answered, and WebSockets are swallowed. */
  | 'no-sockets';

/** A roundabout line of `trip` ms, of which an attempt takes three and a look two. */
function device(seed: number, clock = handClock(), trip = 30) {
  const random = seededRandom(seed);
  const world = { network: 'hole' as Network, trip };
  const attempts: number[] = [];
  const looks: number[] = [];
  let level: number | undefined;
  let blocked = 0;
  let mine = 0;
  const healing = createHealing({
    attempt() {
      attempts.push(clock.now());
      mine += 1;
      const turn = mine;
      const { network } = world;
      if (network === 'hole' || network === 'no-sockets') return;
      clock.after(network === 'fair' ? 3 * world.trip : world.trip, () => {
        if (turn !== mine) return;
        if (world.network !== 'fair') healing.failed();
        else {
          level = clock.now();
          healing.stop();
        }
      });
    },
    look(within) {
      looks.push(clock.now());
      const answers = world.network === 'fair' || world.network === 'no-sockets';
      const takes = world.network === 'restarting' ? world.trip : 2 * world.trip;
      return new Promise((resolve) => {
        if (world.network === 'hole' || takes > within) clock.after(within, () => resolve(false));
        else clock.after(takes, () => resolve(answers));
      });
    },
    onBlocked: () => {
      blocked += 1;
    },
    now: clock.now,
    after: clock.after,
    chance: random,
  });
  return { clock, world, healing, attempts, looks, level: () => level, blocked: () => blocked };
}

const within = (times: readonly number[], from: number, ms: number): number =>
  times.filter((at) => at >= from && at < from + ms).length;

describe('finding the way back [F2]', () => {
  it('is level within 2 s of healing from a hole of 60 s, 99 of 100, however the moments fall', async () => {
    for (const trip of [5, 60, 120]) {
      const waits: number[] = [];
      for (let seed = 1; seed <= 200; seed += 1) {
        const { clock, world, healing, level } = device(seed, handClock(), trip);
        healing.lost('silence');
        await clock.pass(60_000 + seed * 7);
        world.network = 'fair';
        const healed = clock.now();
        await clock.pass(10_000);
        waits.push((level() ?? Number.POSITIVE_INFINITY) - healed);
      }
      waits.sort((a, b) => a - b);
      expect({ trip, soon: (waits[197] ?? 0) <= 2000, last: (waits[199] ?? 0) <= 2500 }).toEqual({
        trip,
        soon: true,
        last: true,
      });
    }
  });

  it('cuts attempts after 1.2 s growing to 2, a fifth apart at most, and a fourth one later', async () => {
    const { clock, healing, attempts } = device(3);
    healing.lost('silence');
    await clock.pass(40_000);
    const waits = attempts.slice(1).map((at, index) => at - (attempts[index] ?? 0));
    for (const [index, usual] of [1200, 1600, 2000, 5000, 2000, 2000, 2000, 5000].entries()) {
      const wait = waits[index] ?? 0;
      expect(wait).toBeGreaterThanOrEqual(usual === 5000 ? 5000 : 0.8 * usual);
      expect(wait).toBeLessThanOrEqual(usual === 5000 ? 5000 : 1.2 * usual);
    }
    expect(new Set(waits).size).toBeGreaterThan(5);
  });

  it('asks no more than 1.5 times a second in a hole, in each ten seconds of it', async () => {
    for (let seed = 1; seed <= 30; seed += 1) {
      const { clock, healing, attempts, looks } = device(seed);
      healing.lost('silence');
      await clock.pass(60_000);
      const all = [...attempts, ...looks];
      expect(all.length).toBeLessThanOrEqual(90);
      for (let from = 0; from < 50_000; from += 1000) {
        expect(within(all, from, 10_000), `seed ${seed} from ${from}`).toBeLessThanOrEqual(16);
      }
    }
  });

  it('does not storm a server that starts again, with 1,000 devices at once', async () => {
    for (const down of [1000, 10_000]) {
      const clock = handClock();
      const devices = Array.from({ length: 1000 }, (_, index) => device(index + 1, clock));
      for (const { world, healing } of devices) {
        world.network = 'restarting';
        healing.lost('hung-up');
      }
      await clock.pass(down);
      for (const { world } of devices) world.network = 'fair';
      await clock.pass(15_000);
      const all = devices.flatMap(({ attempts, looks }) => [...attempts, ...looks]);
      const busiest = Math.max(
        ...Array.from({ length: 100 }, (_, step) => within(all, down + step * 50, 100)),
      );
      // Spread over seconds: in no tenth of a second come more than what one second would do with easily.
      expect({ down, busiest, calm: busiest < (down < 2000 ? 250 : 120) }).toMatchObject({
        down,
        calm: true,
      });
      expect(devices.every(({ level }) => (level() ?? Number.POSITIVE_INFINITY) <= down + 10_200)).toBe(true);
    }
  });

  it('gives a line time that is slow and answers', async () => {
    const { clock, world, healing, level } = device(5, handClock(), 450);
    healing.lost('silence');
    await clock.pass(4000);
    world.network = 'fair';
    await clock.pass(8000);
    expect(level()).toBeLessThan(4000 + 5000);
  });

  it('says that this way in is blocked where requests are answered and no attempt is', async () => {
    const { clock, world, healing, blocked } = device(6);
    world.network = 'no-sockets';
    healing.lost('silence');
    await clock.pass(8000);
    expect(blocked()).toBeGreaterThan(0);
  });

  it('begins at once when it is hurried, and nothing any more once it was stopped', async () => {
    const { clock, world, healing, attempts, looks } = device(7);
    world.network = 'restarting';
    healing.lost('hung-up');
    await clock.pass(100);
    healing.hurry();
    expect(attempts).toEqual([100]);
    await clock.pass(20_000);
    healing.stop();
    const before = attempts.length + looks.length;
    await clock.pass(60_000);
    expect(attempts.length + looks.length).toBe(before);
  });
});
