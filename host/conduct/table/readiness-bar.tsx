import { readySeatsNeeded } from '../../../core/running-order/room-share.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { Icon } from '../../../shared/ui/icon.tsx';
import { clock, hand, ready as readyMark } from '../../../shared/ui/strokes.ts';
import type { Table } from '../../evening/table.ts';
import { words } from '../../language.ts';

interface ReadinessBarProps {
  readonly counts: Table['counts'];
  readonly view: Pick<HostUnderWay, 'pacing' | 'asksReady'>;
  /** Only the host leaves this cue, however many are ready [P2]. */
  readonly gate: boolean;
  /** One line, for a long table. */
  readonly slim: boolean;
}

/** The room at a glance: how many are ready, want time, need the host. The room as one, and never who was slow. */
export function ReadinessBar({
  counts: { here, ready, moreTime, needHost },
  view: { pacing, asksReady: asks },
  gate,
  slim,
}: ReadinessBarProps) {
  if (here === 0 || (!asks && moreTime + needHost === 0)) return null;
  const needed = asks && pacing.by === 'room' && !gate ? readySeatsNeeded(pacing.share, here) : undefined;
  const counts: readonly (Omit<CountProps, 'slim'> & { readonly shown: boolean })[] = [
    { kind: 'ready', of: readyMark, short: ready, words: words.readiness.of(ready, here), shown: asks },
    {
      kind: 'more',
      of: clock,
      short: moreTime,
      words: words.readiness.moreTime(moreTime),
      shown: moreTime > 0,
    },
    {
      kind: 'need',
      of: hand,
      short: needHost,
      words: words.readiness.needHost(needHost),
      shown: needHost > 0,
    },
  ];
  return (
    <div class={slim ? 'stack-close readiness-slim' : 'stack-close'}>
      {asks && <Bar here={here} ready={ready} moreTime={moreTime} needed={needed} />}
      <p class="readiness-words">
        {counts
          .filter(({ shown }) => shown)
          .map((count) => (
            <Count key={count.kind} slim={slim} {...count} />
          ))}
        {needed !== undefined && !slim && <span class="soft">{words.readiness.goesOn(needed, here)}</span>}
      </p>
    </div>
  );
}

interface CountProps {
  readonly of: string;
  readonly slim: boolean;
  readonly short: number;
  readonly words: string;
  readonly kind: 'ready' | 'more' | 'need';
}

/** Beside a long table the figure alone; the words then are for those who do not see the mark. */
function Count({ of, slim, short, words: said, kind }: CountProps) {
  return (
    <span class={`readiness-${kind}`}>
      <Icon of={of} />
      {slim && <span aria-hidden="true">{short}</span>}
      <span class={slim ? 'visually-hidden' : undefined}>{said}</span>
    </span>
  );
}

interface BarProps {
  readonly here: number;
  readonly ready: number;
  readonly moreTime: number;
  /** With pacing by the room: where it goes on. */
  readonly needed: number | undefined;
}

/** The words beside it say the same, so the picture is hidden from those who do not see it. */
function Bar({ here, ready, moreTime, needed }: BarProps) {
  return (
    <svg
      class="readiness-bar"
      viewBox={`0 0 ${here} 1`}
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      <rect class="bar-all" width={here} height="1" />
      <rect class="bar-ready" width={ready} height="1" />
      <rect class="bar-more" x={here - moreTime} width={moreTime} height="1" />
      {needed !== undefined && <path class="bar-needed" d={`M${needed} 0V1`} />}
    </svg>
  );
}
