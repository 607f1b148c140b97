import type { Level, Pacing, Plan } from '../tasting.ts';
import type { Cue } from './cue.ts';
import { pourOf } from './cue.ts';
import { traitsOf } from './cue-traits.ts';
import { readySeatsNeeded } from './room-share.ts';

/** Who sets the pace, and how many the pace waits for. One for plan, rehearsal, fitting and forecast. */
export interface Tempo {
  readonly pacing: Pacing;
  readonly level: Level;
  /** Guests, in the room and at home. */
  readonly guests: number;
  /** Of those at home, for how many the clock and the room wait [P12]; 0 while the host does not have them wait. */
  readonly awaited: number;
}

/** As the plan has it, while nobody has sat down. */
export const tempoOfPlan = ({
  pacing,
  level,
  guests,
  remoteGuests,
}: Pick<Plan, 'pacing' | 'level' | 'guests' | 'remoteGuests'>): Tempo => ({
  pacing,
  level,
  guests: guests + remoteGuests,
  awaited: 0,
});

/** What ends a cue: the host's hand, its time, or the room. */
export type Ending = 'host' | 'clock' | 'room';

/** [P2, P3, P18, P19] @param next what is played after it */
export function endingOf(cue: Cue, next: Cue | undefined, pacing: Pacing): Ending {
  if (cue.gate) return 'host';
  switch (pacing.by) {
    case 'host':
      return 'host';
    case 'clock':
      return 'clock';
    case 'steps':
      return next !== undefined && glassOf(cue) !== undefined && glassOf(cue) === glassOf(next)
        ? 'clock'
        : 'host';
    case 'room':
      return traitsOf(cue).asksReady ? 'room' : 'clock';
    default:
      return pacing satisfies never;
  }
}

/** The glass that a cue belongs to; the practice is one with water in it. */
const glassOf = (cue: Cue): string | undefined =>
  pourOf(cue) ?? (cue.kind === 'practice' ? cue.kind : undefined);

/** How much of that a guest keeps all evening; the rest differs from cue to cue: own estimate, no source. */
const keptShare = 0.6;

/** How far single guests are from their room, on the logarithmic scale: own estimates, no source. */
export const guestSpread: Readonly<Record<Level, number>> = {
  newcomers: 0.35,
  regulars: 0.25,
  devotees: 0.2,
};

/**
 * How long a cue takes, in planned seconds: `exact`, or at least `least` and otherwise drawn from a log-normal whose
 * logarithm has the room's habit plus `shift` as mean and `variance` beside that of the habit.
 */
export type CueTime =
  | { readonly is: 'exact' }
  | {
      readonly is: 'drawn';
      readonly least: number;
      readonly shift: number;
      readonly variance: number;
      /** Of what differs from room to room and not from cue to cue: the variance of the guest who is waited for. */
      readonly kept: number;
    };

/** Spread of single cues around a room's habit: own estimate, no source. */
export const cueVariance = 0.275 ** 2;

/** @param next what is played after it */
export function cueTimeOf(cue: Cue, next: Cue | undefined, tempo: Tempo): CueTime {
  const ending = endingOf(cue, next, tempo.pacing);
  const home = traitsOf(cue).asksReady ? slowestOf(tempo.awaited, tempo.awaited, tempo.level) : undefined;
  if (ending === 'clock')
    return home === undefined ? { is: 'exact' } : { is: 'drawn', least: cue.ideal, ...home };
  const room =
    ending === 'room' && tempo.pacing.by === 'room'
      ? slowestOf(readySeatsNeeded(tempo.pacing.share, tempo.guests), tempo.guests, tempo.level)
      : undefined;
  // By the hand of the host, also in an empty room, which is never ready.
  if (room === undefined) return { is: 'drawn', least: 0, shift: 0, variance: cueVariance, kept: 0 };
  return { is: 'drawn', least: cue.floor, ...(home !== undefined && home.shift > room.shift ? home : room) };
}

/**
 * The one at whose signal a room goes on: the `nth` slowest but last of `of` guests, each δ ~ N(0, s²) from their room.
 * Mean by Blom's approximation of normal order statistics (1958, from memory), variance by the usual p(1 − p) over
 * (n + 2)·φ(z)² (from memory). Undefined where there is nobody.
 */
function slowestOf(nth: number, of: number, level: Level): Slowest | undefined {
  if (of <= 0 || nth <= 0) return undefined;
  const p = (nth - 0.375) / (of + 0.25);
  const z = normalQuantile(p);
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const own = of === 1 ? 1 : Math.min(1, (p * (1 - p)) / ((of + 2) * density * density));
  const spread = guestSpread[level];
  const guest = spread * spread * own;
  return { shift: spread * z, variance: cueVariance + guest, kept: keptShare * guest };
}
type Slowest = Pick<Extract<CueTime, { is: 'drawn' }>, 'shift' | 'variance' | 'kept'>;

/** Abramowitz and Stegun 26.2.23 (from memory): off by less than 4.5e-4 for p between 0 and 1. */
export function normalQuantile(p: number): number {
  if (p > 0.5) return -normalQuantile(1 - p);
  const t = Math.sqrt(-2 * Math.log(p));
  return -(
    t -
    (2.515517 + 0.802853 * t + 0.010328 * t * t) / (1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t ** 3)
  );
}

/** Abramowitz and Stegun 7.1.26 (from memory): off by less than 1.5e-7. */
export function normalBelow(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const tail =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const half = (1 - tail * Math.exp(-x * x)) / 2;
  return z >= 0 ? 0.5 + half : 0.5 - half;
}
