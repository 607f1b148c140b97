import { type ReadonlySignal, signal } from '@preact/signals-core';
import { type EpochMs, epochMs } from '../../core/units.ts';
import type { ProbeReply } from '../wire/protocol.ts';
import { fastestOf, offsetFrom, type Sample, sampleOf, samplesKept } from './offset.ts';

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

export interface ServerClock {
  /** The server's time as best known: the device's own wall clock until the first probe has come back. */
  now(): EpochMs;
  /** Best round trip among the kept probes, in ms; null before the first. */
  readonly roundTrip: ReadonlySignal<number | null>;
  /** True once at least one probe has come back since the start or the last sleep. */
  readonly known: ReadonlySignal<boolean>;
  /** Sends one probe and takes in its answer; false when no answer came. */
  probe(send: (roundTrip: number | null) => Promise<ProbeReply>): Promise<boolean>;
  /** Whether the device has slept or its clock was set since the last look; forgets the samples if so. */
  slept(): boolean;
}

export function createServerClock(local: LocalClock = deviceClock): ServerClock {
  let samples: Sample[] = [];
  let gap = local.wall() - local.steady();
  const roundTrip = signal<number | null>(null);
  const known = signal(false);

  /** Samples are kept against the steady clock, so that setting the wall clock does not move the countdown. */
  const now = (): EpochMs => {
    const offset = offsetFrom(samples);
    return epochMs(offset === undefined ? local.wall() : local.steady() + offset);
  };

  return {
    now,
    roundTrip,
    known,
    async probe(send) {
      const t1 = local.steady();
      const reply = await send(roundTrip.peek()).catch(() => undefined);
      if (reply === undefined) return false;
      const sample = sampleOf({ t1, t2: reply.received, t3: reply.sent, t4: local.steady() });
      if (sample !== undefined) {
        samples = [...samples, sample].slice(-samplesKept);
        roundTrip.value = fastestOf(samples)?.delay ?? null;
        known.value = true;
      }
      return true;
    },
    slept() {
      const gapNow = local.wall() - local.steady();
      if (Math.abs(gapNow - gap) <= sleepTolerance) return false;
      gap = gapNow;
      samples = [];
      known.value = false;
      return true;
    },
  };
}
