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

/** Undefined where a clock was stepped during the exchange: a round trip cannot be negative. */
export function sampleOf({ t1, t2, t3, t4 }: Probe): Sample | undefined {
  const delay = t4 - t1 - (t3 - t2);
  if (!(delay >= 0)) return undefined;
  return { offset: durationMs((t2 - t1 + (t3 - t4)) / 2), delay: durationMs(delay) };
}

/** How many samples a device keeps, as RFC 5905's clock filter does (section 10). */
export const samplesKept = 8;
const fastest = 3;

/**
 * The mean offset of the three fastest of the samples kept. RFC 5905 takes the single fastest; in a simulation of LAN,
 * Wi-Fi and 4G the mean of three had the smaller error in every network tried.
 * Undefined without samples. Equal delays: the earlier sample first.
 */
export function offsetFrom(samples: readonly Sample[]): DurationMs | undefined {
  const best = samples.toSorted((a, b) => a.delay - b.delay).slice(0, fastest);
  if (best.length === 0) return undefined;
  return durationMs(best.reduce((sum, sample) => sum + sample.offset, 0) / best.length);
}

/** The sample with the least delay, the earliest of equals: the clock filter of RFC 5905, section 10. */
export function fastestOf(samples: readonly Sample[]): Sample | undefined {
  return samples.toSorted((a, b) => a.delay - b.delay)[0];
}
