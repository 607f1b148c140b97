import { seconds } from '../units.ts';
import type { Cue } from './cue.ts';
import { type Work, workOf, works } from './cue-traits.ts';
import { doubtOf, eveningVariance, type Habits } from './forecast.ts';
import { readySeatsNeeded } from './room-share.ts';
import { cueTimeOf, cueVariance, endingOf, guestSpread, type Tempo } from './tempo.ts';

/**
 * Evenings played with stand-ins, by the model of the forecast: a room takes for a cue its planned time times
 * exp(μ + ε), where μ is its habit for that kind of work, drawn once an evening, and ε ~ N(0, σ²) is drawn for each cue.
 *
 * The tempo decides what becomes of that time. What the host ends takes it as it is; what ends by its time takes the
 * planned time. Where the room ends a cue each guest i is ready after planned · exp(μ + ε + δᵢ), and it ends when the chosen
 * share of them is, never before its floor.
 */
export interface Rehearsed extends Tempo {
  readonly cues: readonly Cue[];
  readonly habits: Habits;
}

/** Numbers from 0 up to but not including 1. */
export type Random = () => number;

/** Standard normal numbers by Marsaglia and Bray's polar method (1964; from memory). */
export function normalsFrom(random: Random): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const second = spare;
      spare = undefined;
      return second;
    }
    for (;;) {
      const [u, v] = [2 * random() - 1, 2 * random() - 1];
      const s = u * u + v * v;
      if (s <= 0 || s >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * scale;
      return u * scale;
    }
  };
}

/**
 * The chance of one evening, the same whatever is made of the plan: two plans that are played with it differ only by
 * what differs in them, so that their difference needs few evenings to be known.
 */
export interface Luck {
  /** Standard normal: a whole evening that is slow or quick. */
  readonly evening: number;
  /** Standard normal, one for each kind of work. */
  readonly habits: Readonly<Record<Work, number>>;
  /** Standard normal, by cue id. */
  readonly room: ReadonlyMap<string, number>;
  /** By cue id: how far the guest at whose signal the room goes on is from the room, in units of the spread. */
  readonly lastNeeded: ReadonlyMap<string, number>;
}

/** Draws for every cue of `cues`; a plan with fewer cues can be played with it too. */
export function drawLuck({ cues, pacing, guests }: Rehearsed, normal: () => number): Luck {
  const evening = normal();
  const habits = Object.fromEntries(works.map((work) => [work, normal()])) as Record<Work, number>;
  const room = new Map(cues.map(({ id }) => [id as string, normal()]));
  const lastNeeded = new Map<string, number>();
  if (pacing.by === 'room' && guests > 0) {
    const nth = readySeatsNeeded(pacing.share, guests) - 1;
    cues.forEach((cue, index) => {
      if (endingOf(cue, cues[index + 1], pacing) !== 'room') return;
      const ready = Float64Array.from({ length: guests }, normal).sort();
      lastNeeded.set(cue.id, ready[nth] ?? 0);
    });
  }
  return { evening, habits, room, lastNeeded };
}

/** Seconds that each cue took, in order. */
export function playEvening({ cues, habits, ...tempo }: Rehearsed, luck: Luck): number[] {
  const spread = Math.sqrt(cueVariance);
  const whole = Math.sqrt(eveningVariance * doubtOf(habits)) * luck.evening;
  return cues.map((cue, index) => {
    const time = cueTimeOf(cue, cues[index + 1], tempo);
    if (time.is === 'exact') return cue.ideal;
    const work = workOf(cue);
    const { mean, variance } = habits[work];
    const mu = whole + mean + Math.sqrt(variance) * luck.habits[work];
    const last = luck.lastNeeded.get(cue.id) ?? 0;
    const own = mu + spread * (luck.room.get(cue.id) ?? 0) + guestSpread[tempo.level] * last;
    return Math.max(time.least, cue.ideal * Math.exp(own));
  });
}

/** The quantile `q` (0 to 1) of sorted values, linear between neighbours (Hyndman and Fan's type 7, from memory). */
export function quantile(sorted: readonly number[], q: number): number {
  if (sorted.length === 0) return 0;
  const at = q * (sorted.length - 1);
  const below = sorted[Math.floor(at)] ?? 0;
  const above = sorted[Math.ceil(at)] ?? below;
  return below + (above - below) * (at - Math.floor(at));
}

/** A length as nine in ten, half and one in ten of the evenings have exceeded it; in seconds. */
export interface Range {
  readonly early: number;
  readonly likely: number;
  readonly late: number;
}

export function rangeOf(values: readonly number[]): Range {
  const sorted = values.toSorted((a, b) => a - b);
  return {
    early: seconds(quantile(sorted, 0.1)),
    likely: seconds(quantile(sorted, 0.5)),
    late: seconds(quantile(sorted, 0.9)),
  };
}
