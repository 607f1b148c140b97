import type { PartKind } from '../../../core/running-order/cue-traits.ts';
import { recapWords as words } from '../../../shared/language/en/recap.ts';
import { lengthOf } from '../figures.ts';

export interface Segment {
  readonly kind: PartKind;
  /** Seconds after the doors opened. */
  readonly from: number;
  readonly to: number;
  readonly name: string;
  /** A number or a letter that fits into a narrow piece. */
  readonly short: string;
}

interface TimelineProps {
  readonly planned: readonly Segment[];
  readonly taken: readonly Segment[];
}

const barHeight = 34;
/** Below this share of the width a letter no longer fits on a phone. */
const narrowest = 0.045;

/** The plan above, the evening below, on one scale. */
export function Timeline({ planned, taken }: TimelineProps) {
  const whole = Math.max(1, ...[...planned, ...taken].map(({ to }) => to));
  const kinds = [...new Set([...planned, ...taken].map(({ kind }) => kind))].filter(
    (kind) => kind !== 'glass',
  );
  return (
    <figure class="timeline">
      {(
        [
          [words.timing.planned, planned],
          [words.timing.took, taken],
        ] as const
      ).map(([which, segments]) => (
        <div key={which} class="timeline-row">
          <span class="small">{which}</span>
          <svg
            role="img"
            width="100%"
            height={barHeight}
            aria-label={words.timing.picture(
              which,
              segments.map(({ name, from, to }) => words.timing.partTime(name, lengthOf(to - from))),
            )}
          >
            {segments.map((segment) => (
              <Piece key={segment.from} segment={segment} whole={whole} />
            ))}
          </svg>
        </div>
      ))}
      <div class="timeline-row" aria-hidden="true">
        <span />
        <svg width="100%" height="20" aria-hidden="true">
          {ticksOf(whole).map((tick) => (
            <g key={tick}>
              <line class="drawn-axis" x1={share(tick, whole)} x2={share(tick, whole)} y1="0" y2="5" />
              <text
                class="drawn-text"
                x={share(tick, whole)}
                y="17"
                text-anchor={tick === 0 ? 'start' : tick > whole * 0.94 ? 'end' : 'middle'}
              >
                {tick === 0 ? '0' : lengthOf(tick)}
              </text>
            </g>
          ))}
        </svg>
      </div>
      <figcaption class="timeline-key small">
        <span>{words.timing.numbers}</span>
        {kinds.map((kind) => (
          <span key={kind} class="timeline-kind">
            <svg width="22" height="22" aria-hidden="true">
              <rect class={`piece-${kind}`} width="22" height="22" />
              <text class={`piece-text piece-text-${kind}`} x="50%" y="16" text-anchor="middle">
                {words.timing.letters[kind]}
              </text>
            </svg>
            {words.timing.parts[kind]}
          </span>
        ))}
      </figcaption>
    </figure>
  );
}

function Piece({ segment, whole }: { readonly segment: Segment; readonly whole: number }) {
  const { kind, from, to, short } = segment;
  return (
    <>
      <rect
        class={`piece piece-${kind}`}
        x={share(from, whole)}
        width={share(to - from, whole)}
        height="100%"
      />
      {(to - from) / whole >= narrowest && (
        <text
          class={`piece-text piece-text-${kind}`}
          x={share((from + to) / 2, whole)}
          y={barHeight / 2 + 5}
          text-anchor="middle"
        >
          {short}
        </text>
      )}
    </>
  );
}

const share = (seconds: number, whole: number): string => `${(seconds / whole) * 100}%`;

/** Round times, five at most. */
function ticksOf(whole: number): number[] {
  const step = [300, 600, 900, 1800, 3600, 7200, 14_400].find((each) => whole / each <= 5) ?? 28_800;
  return Array.from({ length: Math.floor(whole / step) + 1 }, (_, index) => index * step);
}
