import { levelAt } from './glass-shape.ts';
import { StemmedGlass } from './stemmed-glass.tsx';
import { type CueTime, countdownFigures, type TimePhase, timeLeft } from './time-left.ts';

interface DrainingGlassProps {
  readonly time: CueTime;
  /** Epoch milliseconds on the server's clock. */
  readonly now: number;
  /** What is counted, for those who do not see the glass. */
  readonly label: string;
  /** The word under the figures, by phase. */
  readonly words: Readonly<Record<TimePhase, string>>;
}

/**
 * Time as a glass that drains, with the figures beside it. It is drawn anew at each beat rather than animated, so
 * it asks nothing of a device that saves its battery and nothing of people who want less motion. Its liquid is
 * verdigris, which no drink is: the picture must not tell anybody what to see in the glass.
 */
export function DrainingGlass({ time, now, label, words }: DrainingGlassProps) {
  const { phase, remaining, share } = timeLeft(time, now);
  return (
    <div class={`drain drain-${phase}`} role="timer" aria-label={label}>
      <StemmedGlass level={levelAt(share)} />
      <p class="drain-words">
        <span class="drain-figures figures">{countdownFigures(remaining)}</span>
        <span class="drain-phase">{words[phase]}</span>
      </p>
    </div>
  );
}
