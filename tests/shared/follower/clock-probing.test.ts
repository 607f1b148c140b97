import { describe, expect, it } from 'vitest';
import { createProbing } from '../../../shared/follower/clock-probing.ts';
import { handClock } from './hand-clock.ts';

function probed(answer: () => Promise<boolean> = async () => true, cueRuns = () => false) {
  const clock = handClock();
  const at: number[] = [];
  let silences = 0;
  const probing = createProbing({
    probe: () => {
      at.push(clock.now());
      return answer();
    },
    cueRuns,
    onSilence: () => {
      silences += 1;
    },
    now: clock.now,
    after: clock.after,
  });
  return { clock, at, probing, silences: () => silences };
}

describe('probing the server’s clock [F4]', () => {
  it('sends eight at once, forty more over a minute, and then seven or eight a minute', async () => {
    const { clock, at, probing } = probed();
    probing.start();
    await clock.pass(150 * 7);
    expect(at).toHaveLength(8);
    await clock.pass(60_000);
    expect(at).toHaveLength(48);
    const before = at.length;
    await clock.pass(600_000);
    expect(at.length - before).toBe(75);
  });

  it('begins anew on waking, in one chain however often it is woken', async () => {
    const { clock, at, probing } = probed();
    probing.start();
    await clock.pass(300_000);
    const before = at.length;
    for (let wake = 0; wake < 3; wake += 1) probing.start();
    await clock.pass(150 * 7);
    expect(at.length - before).toBe(3 + 7);
    probing.stop();
    await clock.pass(600_000);
    expect(at.length - before).toBe(10);
  });

  it('probes after 2 s of silence while a cue runs, and no more often', async () => {
    let runs = true;
    const { clock, at, probing } = probed(
      async () => true,
      () => runs,
    );
    probing.start();
    await clock.pass(120_000);
    const before = at.length;
    await clock.pass(60_000);
    expect(at.length - before).toBe(30);
    runs = false;
    await clock.pass(2000);
    const still = at.length;
    await clock.pass(80_000);
    expect(at.length - still).toBe(10);
  });

  it('probes for the clock’s sake four times a minute in the first six, and then twice, where the server says that it lives', async () => {
    const { clock, at, probing } = probed(
      async () => true,
      () => true,
    );
    probing.start();
    await clock.pass(120_000);
    const live = async (until: number): Promise<number> => {
      const before = at.length;
      while (clock.now() < until) {
        await clock.pass(1750);
        probing.heard();
      }
      return at.length - before;
    };
    expect(await live(360_000)).toBe(17);
    expect(await live(960_000)).toBe(19);
  });

  it('finds a line dead within 4 s of the last sign of life', async () => {
    const dead = { since: Number.POSITIVE_INFINITY, found: 0 };
    const clock = handClock();
    const probing = createProbing({
      probe: () =>
        new Promise(
          (resolve) =>
            void clock.after(clock.now() < dead.since ? 20 : 1000, () => resolve(clock.now() < dead.since)),
        ),
      cueRuns: () => true,
      onSilence: () => {
        dead.found = clock.now();
      },
      now: clock.now,
      after: clock.after,
    });
    probing.start();
    for (let ms = 0; ms < 140_000; ms += 1750) {
      await clock.pass(1750);
      probing.heard();
    }
    dead.since = clock.now();
    await clock.pass(60_000);
    expect(dead.found - dead.since).toBeLessThanOrEqual(4000);
    expect(dead.found).toBeGreaterThan(0);
  });

  it('asks a second time at once, and then says that nobody answers, once, and stops', async () => {
    const { clock, at, probing, silences } = probed(async () => false);
    probing.start();
    await clock.pass(600_000);
    expect([at, silences()]).toEqual([[0, 0], 1]);
  });

  it('takes any packet for life, and a second probe that is answered', async () => {
    const answers = [true, false, true];
    const { clock, probing, silences } = probed(async () => answers.shift() ?? true);
    probing.start();
    await clock.pass(60_000);
    let count = 0;
    const talkative = probed(async () => {
      count += 1;
      talkative.probing.heard();
      return count % 3 === 0;
    });
    talkative.probing.start();
    await talkative.clock.pass(60_000);
    expect([silences(), talkative.silences(), talkative.at.length > 40]).toEqual([0, 0, true]);
  });

  it('gives up a line that only brings: after three without an answer, of which the later have 5 s', async () => {
    const patience: (number | undefined)[] = [];
    let silences = 0;
    const clock = handClock();
    const probing = createProbing({
      probe: async (within) => {
        patience.push(within);
        probing.heard();
        return false;
      },
      cueRuns: () => true,
      onSilence: () => {
        silences += 1;
      },
      now: clock.now,
      after: clock.after,
    });
    probing.start();
    await clock.pass(60_000);
    expect([silences, patience]).toEqual([1, [undefined, 5000, 5000]]);
  });

  it('says nothing of an answer that comes after it was stopped', async () => {
    let settle: (answered: boolean) => void = () => undefined;
    const { clock, at, probing, silences } = probed(() => new Promise((resolve) => (settle = resolve)));
    probing.start();
    probing.stop();
    settle(false);
    await clock.pass(60_000);
    expect([at.length, silences()]).toEqual([1, 0]);
  });
});
