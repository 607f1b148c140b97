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
  const least = delays[0];
  if (least === undefined) return undefined;
  const usual = (delays[Math.floor(delays.length / 4)] ?? least) - least + 1;
  const weighted = samples.map(({ offset, delay, at }) => ({
    offset,
    at,
    weight: (1 + (delay - least) / usual) ** -2,
  }));
  const weights = sumOf(weighted, ({ weight }) => weight);
  const mean = sumOf(weighted, ({ weight, offset }) => weight * offset) / weights;
  const at = sumOf(weighted, (each) => each.weight * each.at) / weights;
  const noise = 1 + sumOf(weighted, ({ weight, offset }) => weight * (offset - mean) ** 2) / weights;
  const slope =
    sumOf(weighted, (each) => each.weight * (each.at - at) * (each.offset - mean)) /
    (sumOf(weighted, (each) => each.weight * (each.at - at) ** 2) + noise / usualDrift ** 2);
  return { offset: durationMs(mean), at, slope };
}

const sumOf = <Item>(items: readonly Item[], of: (item: Item) => number): number =>
  items.reduce((sum, item) => sum + of(item), 0);

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
