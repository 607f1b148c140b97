import type { ProbeRequest } from '../wire/protocol.ts';

/** What differs by less than this share of itself, and less than so many ms, is no news. */
const noticeableShare = 0.25;
const noticeableMs = 5;

const differs = (told: number | null | undefined, now: number): boolean =>
  told == null || Math.abs(now - told) > Math.max(noticeableMs, noticeableShare * told);

/**
 * What a device measures of its network, in whole ms, where it is something new to the server; otherwise null, for most
 * probes have nothing to tell.
 */
export function createToldMeasures() {
  let told: ProbeRequest | null = null;
  return {
    news({ roundTrip, reach = null }: ProbeRequest): ProbeRequest | null {
      if (roundTrip === null || reach === null) return null;
      if (!differs(told?.roundTrip, roundTrip) && !differs(told?.reach, reach)) return null;
      told = { roundTrip: Math.round(roundTrip), reach: Math.ceil(reach) };
      return told;
    },
    /** On a new line the server knows nothing of it. */
    forget(): void {
      told = null;
    },
  };
}
