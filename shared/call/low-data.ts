import type { LineMeasure } from './call-media.ts';

/** Below this a picture takes the line from the voice. */
const tooLittle = 150_000;
/** Above a tenth a sender gives way (draft-ietf-rmcat-gcc-02, section 6); when that does not help, the line is too poor. */
const tooMuchMissing = 0.1;
/** Measures in a row, so that one bad moment takes nobody's picture. */
const inARow = 3;

/**
 * Whether this device's line, out or in, has become too poor for pictures. One other device with a poor line of its own is
 * no reason: measures are of the best line.
 *
 * @param measures latest last
 */
export const tooPoorForPictures = (measures: readonly LineMeasure[]): boolean =>
  measures.length >= inARow &&
  measures
    .slice(-inARow)
    .every(
      ({ room, missing }) =>
        (room !== null && room < tooLittle) || (missing !== null && missing > tooMuchMissing),
    );

/** Of one picture that comes, counted from its beginning (W3C, webrtc-stats, RTCInboundRtpStreamStats). */
export interface Arrivals {
  readonly received: number;
  readonly lost: number;
}

/** What of a picture has not come between two looks, from 0 to 1; null where nothing was on its way. */
export function missingSince(before: Arrivals | undefined, now: Arrivals): number | null {
  const received = now.received - (before?.received ?? 0);
  const lost = Math.max(0, now.lost - (before?.lost ?? 0));
  return received + lost <= 0 ? null : lost / (received + lost);
}
