import { type DurationMs, durationMs, type EpochMs } from '../../core/units.ts';

/**
 * Clock offset and round trip of one probe, as in RFC 5905, section 8.
 * T1 sent and T4 received on this device's clock, T2 received and T3 sent on the server's; all in ms.
 */
export interface Probe {
  readonly t1: number;
  readonly t2: EpochMs;
  readonly t3: EpochMs;
  readonly t4: number;
}

export interface Sample {
  /** Server clock minus device clock, ((T2 - T1) + (T3 - T4)) / 2. */
  readonly offset: DurationMs;
  /** (T4 - T1) - (T3 - T2); the true offset lies within half of it on either side. */
  readonly delay: DurationMs;
}

/** `at`: when it came, on this device's clock, in ms. */
export interface TimedSample extends Sample {
  readonly at: number;
}

/** The server's offset at one moment of this device's clock, and what is added to it in each ms after. */
export interface ClockLine {
  readonly offset: DurationMs;
  readonly at: number;
  readonly slope: number;
}

/** What two clocks of quartz usually part, as a fraction: common practice, no source. */
const usualDrift = 30e-6;

/** Undefined where a clock was stepped during the exchange: a round trip cannot be negative. */
export function sampleOf({ t1, t2, t3, t4 }: Probe): Sample | undefined {
  const delay = t4 - t1 - (t3 - t2);
  if (!(delay >= 0)) return undefined;
  return { offset: durationMs((t2 - t1 + (t3 - t4)) / 2), delay: durationMs(delay) };
}

/**
 * The server's offset from many samples: a line through them, in which a sample counts the less, the longer its round
 * trip took above the shortest. The filter of RFC 5905, section 10, trusts the fastest alone, its combining (section
 * 11.2.3) weighs by the reciprocal of the distance; the square of that did best, or within a tenth of best, over LAN, Wi-Fi
 * and 4G with normal and lognormal delays. What counts as long is taken from the samples' own lower quartile.
 *
 * How fast the two clocks part is the slope of that line: least squares with the drift of quartz as what is known before
 * (ridge regression), so that it is learned only as far as the samples tell it from the network. Undefined without samples.
 */
export function offsetFrom(samples: readonly TimedSample[]): ClockLine | undefined {
  const delays = samples.map((sample) => sample.delay).toSorted((a, b) => a - b);
  const [least] = delays;
  const [first] = samples;
  if (least === undefined || first === undefined) return undefined;
  const usual = (delays[Math.floor(delays.length / 4)] ?? least) - least + 1;
  // From the first sample on, for squares of the time since 1970 leave no digits for milliseconds.
  let [w, x, y, xx, xy, yy] = [0, 0, 0, 0, 0, 0];
  for (const { offset, delay, at } of samples) {
    const weight = (1 + (delay - least) / usual) ** -2;
    const [dx, dy] = [at - first.at, offset - first.offset];
    w += weight;
    x += weight * dx;
    y += weight * dy;
    xx += weight * dx * dx;
    xy += weight * dx * dy;
    yy += weight * dy * dy;
  }
  const noise = 1 + (yy - (y * y) / w) / w;
  const slope = (xy - (x * y) / w) / (xx - (x * x) / w + noise / usualDrift ** 2);
  return { offset: durationMs(first.offset + y / w), at: first.at + x / w, slope };
}

/** The sample with the least delay, the earliest of equals: the clock filter of RFC 5905, section 10. */
export function fastestOf(samples: readonly Sample[]): Sample | undefined {
  return samples.toSorted((a, b) => a.delay - b.delay)[0];
}

/**
 * How long a message may take to this device, in ms: of the slowest round trip, all but what the way back takes at its
 * best. Undefined without samples.
 */
export function reachFrom(samples: readonly Sample[]): DurationMs | undefined {
  const delays = samples.map((sample) => sample.delay);
  return delays.length === 0 ? undefined : durationMs(Math.max(...delays) - Math.min(...delays) / 2);
}
