import type { Range } from '../../../core/running-order/rehearsal.ts';

interface EndBandProps {
  readonly range: Range;
  /** Seconds, as the range. */
  readonly planned: number;
  /** Seconds at the right end of the picture. */
  readonly span: number;
}

/** Drawn as a line, so that nothing but its length changes with the width of the page. */
const height = 20;
const middle = height / 2;

/** Where a part of the evening ends, on the evening's own length. What it shows stands beside it in words. */
export function EndBand({ range: { early, likely, late }, planned, span }: EndBandProps) {
  const x = (seconds: number): number => (span <= 0 ? 0 : (100 * seconds) / span);
  return (
    <svg
      class="end-band"
      viewBox={`0 0 100 ${height}`}
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      <path class="end-band-all" d={`M0 ${middle}H100`} />
      <path class="end-band-range" d={`M${x(early)} ${middle}H${x(late)}`} />
      <path class="end-band-likely" d={`M${x(likely)} ${middle}h0`} />
      <path class="end-band-planned" d={`M${x(planned)} 0V${height}`} />
    </svg>
  );
}
