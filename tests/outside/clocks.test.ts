import { describe, expect, it } from 'vitest';
import { epochMs } from '../../core/units.ts';
import { fastestOf, sampleOf } from '../../shared/follower/clock-offset.ts';
import { createServerClock } from '../../shared/follower/server-clock.ts';
import published from './clocks.json' with { type: 'json' };
import { expectWithin, type PublishedCase } from './published-case.ts';

/**
 * RFC 5905, section 8 (offset and round trip) and section 10 (the sample of least delay); each case names its source.
 * The true offset lies within half the round trip on either side of the measured one.
 */
type Probed = readonly [number, number, number, number];

const cases = published.cases as readonly (PublishedCase & { readonly input: Record<string, unknown> })[];

const sampled = ([t1, t2, t3, t4]: Probed) => sampleOf({ t1, t2: epochMs(t2), t3: epochMs(t3), t4 });

const withBound = (sample: ReturnType<typeof sampled>) =>
  sample === undefined ? null : { ...sample, errorBound: sample.delay / 2 };

function answer(input: Record<string, unknown>): unknown {
  switch (input.op) {
    case 'offsetDelay':
      return withBound(sampled([input.T1, input.T2, input.T3, input.T4] as unknown as Probed));
    case 'bestOfN': {
      const samples = (input.samples as Probed[]).map(sampled);
      const best = fastestOf(samples.filter((each) => each !== undefined));
      return best === undefined ? null : { index: samples.indexOf(best), ...withBound(best) };
    }
    case 'toHostTime': {
      const { guestMs, offsetMs } = input as unknown as { guestMs: number; offsetMs: number };
      return hostTime(guestMs, offsetMs);
    }
    default:
      throw new Error(`No method for ${String(input.op)}.`);
  }
}

/** What the follower's clock says at `guest`, after one probe without any delay has shown it this offset. */
function hostTime(guest: number, offset: number): Promise<number> {
  const clock = createServerClock({ steady: () => guest, wall: () => guest });
  const server = epochMs(guest + offset);
  return clock.probe(async () => ({ received: server, sent: server })).then(() => clock.now());
}

describe('offset and round trip of a device, against published arithmetic', () => {
  it('has cases', () => expect(cases.length).toBeGreaterThan(10));

  it.each(cases.map((each) => [each.name, each] as const))(
    '%s',
    async (_, { input, expected, tolerance }) => {
      const given = await answer(input);
      if (isObject(expected) && expected.usable === false) return expect(given).toBeNull();
      if (isObject(expected) && isObject(given) && 'trueOffset' in expected) {
        const { trueOffset, absErrorAtMost, ...rest } = expected;
        expectWithin(given.errorBound, absErrorAtMost, tolerance);
        expect(Math.abs(Number(given.offset) - Number(trueOffset))).toBeLessThanOrEqual(
          Number(given.errorBound),
        );
        return expectWithin(given, rest, tolerance);
      }
      expectWithin(given, expected, tolerance);
    },
  );
});

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
