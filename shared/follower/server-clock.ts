import { type ReadonlySignal, signal } from '@preact/signals-core';
import { type EpochMs, epochMs } from '../../core/units.ts';
import type { ProbeReply } from '../wire/protocol.ts';
import {
  type ClockLine,
  fastestOf,
  offsetFrom,
  reachFrom,
  type Sample,
  sampleOf,
  type TimedSample,
} from './clock-offset.ts';

/** This device's own clocks. */
export interface LocalClock {
  /** Ms since any moment; never stepped, but it stands still while most devices sleep. */
  steady(): number;
  /** Ms since 1970 as the device believes; anybody may set it. */
  wall(): number;
}

export const deviceClock: LocalClock = {
  steady: () => performance.now(),
  wall: () => Date.now(),
};

/** How far wall and steady clock may drift apart before this device must have slept or been set. */
const sleepTolerance = 300;

/** How many samples tell the offset and the drift, and for how long, in ms. */
const samplesKept = 64;
const keptFor = 1_920_000;
/** How many of the latest, of the last so many ms, tell what the network is like now: a stall is soon forgotten. */
export const samplesOfNow = 16;
const nowFor = 90_000;

/** What a device has measured of its network. */
interface Measured {
  /** The best round trip of late, in ms; null before the first. */
  readonly roundTrip: number | null;
  /** How long a message may take to this device, in ms; null before the first. */
  readonly reach: number | null;
}

export interface ServerClock {
  /** The server's time as best known: the device's own wall clock until the first probe has come back. */
  now(): EpochMs;
  /** Best round trip of late, in ms; null before the first. */
  readonly roundTrip: ReadonlySignal<number | null>;
  /** True once at least one probe has come back since the start or the last sleep. */
  readonly known: ReadonlySignal<boolean>;
  /** Sends one probe and takes in its answer; false when no answer came. */
  probe(send: (measured: Measured) => Promise<ProbeReply>): Promise<boolean>;
  /** Whether the device has slept or its clock was set since the last look; forgets the samples if so. */
  slept(): boolean;
}

/**
 * The true offset lies within half the delay of each sample (RFC 5905, section 8): where two are much further apart, the
 * server's clock was put forward between them, for instance because its machine slept.
 */
const agree = (a: Sample, b: Sample): boolean =>
  Math.abs(a.offset - b.offset) <= a.delay + b.delay + sleepTolerance;

export function createServerClock(local: LocalClock = deviceClock): ServerClock {
  let samples: readonly TimedSample[] = [];
  /** Through these samples. */
  let line: ClockLine | undefined;
  let gap = local.wall() - local.steady();
  const roundTrip = signal<number | null>(null);
  const known = signal(false);

  /** Samples are kept against the steady clock, so that setting the wall clock does not move the countdown. */
  const now = (): EpochMs => {
    const steady = local.steady();
    return epochMs(
      line === undefined ? local.wall() : steady + line.offset + line.slope * (steady - line.at),
    );
  };

  const latest = (moment: number) => samples.slice(-samplesOfNow).filter(({ at }) => moment - at <= nowFor);

  return {
    now,
    roundTrip,
    known,
    async probe(send) {
      const t1 = local.steady();
      const ofNow = latest(t1);
      const measured = { roundTrip: roundTrip.peek(), reach: reachFrom(ofNow) ?? null };
      const reply = await send(measured).catch(() => undefined);
      if (reply === undefined) return false;
      const t4 = local.steady();
      const { received, sent } = typeof reply === 'number' ? { received: reply, sent: reply } : reply;
      const sample = sampleOf({ t1, t2: received, t3: sent, t4 });
      if (sample !== undefined) {
        samples = [...samples, { ...sample, at: t4 }]
          .filter(({ at, ...old }) => t4 - at <= keptFor && agree(old, sample))
          .slice(-samplesKept);
        line = offsetFrom(samples);
        roundTrip.value = fastestOf(latest(t4))?.delay ?? null;
        known.value = true;
      }
      return true;
    },
    slept() {
      const gapNow = local.wall() - local.steady();
      if (Math.abs(gapNow - gap) <= sleepTolerance) return false;
      gap = gapNow;
      samples = [];
      line = undefined;
      known.value = false;
      return true;
    },
  };
}
