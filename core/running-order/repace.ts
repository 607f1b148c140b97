import type { CueId } from '../ids.ts';
import { type Seconds, seconds } from '../units.ts';
import type { Cue } from './cue.ts';

/**
 * Fits what remains of an evening into the time that is left.
 *
 * The optimum: no cue gives up a larger share of its spare time, per unit of its stretch, than is needed. Formally,
 * minimise λ subject to Σ fᵢ·cutᵢ ≥ need and 0 ≤ cutᵢ ≤ min(1, λ·stretchᵢ)·spareᵢ, where spare = ideal − floor and f
 * is how many seconds this room takes for a planned one. A linear programme; solved exactly here by walking the points
 * at which a cue reaches its floor. Spit, water and breaks have floors of their own that hold as all others [C2].
 */
export interface Fit {
  readonly status: 'fits' | 'too-long';
  /** New lengths, in whole seconds, of the cues that change. */
  readonly lengths: Lengths;
  /** Expected seconds of the remaining cues after fitting. */
  readonly expected: Seconds;
  /** Expected seconds by which even the floors are too long; 0 when it fits. */
  readonly over: Seconds;
  /** The share λ that was needed; 0 when nothing had to be cut. */
  readonly share: number;
}

/** Lengths of single cues. */
export type Lengths = readonly { readonly cue: CueId; readonly seconds: Seconds }[];

/** Seconds this room is expected to take for one planned second of a cue; 1 when nothing is known. */
export type Pace = (cue: Cue) => number;

/**
 * @param remaining the cues still to come, without the current one
 * @param available seconds from the end of the current cue to the wanted end; negative when that is past
 * @throws RangeError for what is no number of seconds
 */
export function fitInto(remaining: readonly Cue[], available: number, pace: Pace = () => 1): Fit {
  if (!Number.isFinite(available))
    throw new RangeError(`What remains is fitted into a number of seconds, not into ${available}.`);
  const expectedAll = remaining.reduce((sum, cue) => sum + cue.ideal * pace(cue), 0);
  const need = expectedAll - available;
  if (need <= 0)
    return { status: 'fits', lengths: [], expected: seconds(expectedAll), over: seconds(0), share: 0 };
  const elastic = remaining.filter((cue) => cue.ideal > cue.floor && cue.stretch > 0);
  const share = leastShare(elastic, need, pace);
  const cuts = elastic.map((cue) => Math.min(1, share * cue.stretch) * (cue.ideal - cue.floor));
  const lengths = wholeSeconds(elastic, cuts, pace, need);
  const saved = lengths.reduce((sum, { cue, seconds: length }) => sum + (cue.ideal - length) * pace(cue), 0);
  return {
    status: saved >= need - 1e-9 ? 'fits' : 'too-long',
    lengths: lengths.map(({ cue, seconds: length }) => ({ cue: cue.id, seconds: length })),
    expected: seconds(expectedAll - saved),
    over: seconds(Math.max(0, need - saved)),
    share,
  };
}

/** The least λ whose cuts add up to `need`; when even λ = ∞ is too little, the λ at which all stand at their floors. */
function leastShare(elastic: readonly Cue[], need: number, pace: Pace): number {
  const spare = (cue: Cue) => pace(cue) * (cue.ideal - cue.floor);
  const byFloor = elastic.toSorted((a, b) => b.stretch - a.stretch);
  let atFloor = 0;
  let slope = elastic.reduce((sum, cue) => sum + cue.stretch * spare(cue), 0);
  for (const cue of byFloor) {
    const reaches = 1 / cue.stretch;
    if (atFloor + slope * reaches >= need) return (need - atFloor) / slope;
    atFloor += spare(cue);
    slope -= cue.stretch * spare(cue);
  }
  const last = byFloor.at(-1);
  return last === undefined ? 0 : 1 / last.stretch;
}

/**
 * Whole seconds, with the sum of the cuts never short of `need`: every cut is rounded down, then those that lost most
 * by it give one second more until it is enough, never below a floor.
 */
function wholeSeconds(cues: readonly Cue[], cuts: readonly number[], pace: Pace, need: number) {
  const rows = cues.map((cue, index) => {
    const exact = cuts[index] ?? 0;
    // A hair above a whole number is rounding of the arithmetic, not a wish.
    const cut = Math.floor(exact + 1e-9);
    return { cue, cut, lost: exact - cut };
  });
  let saved = rows.reduce((sum, row) => sum + row.cut * pace(row.cue), 0);
  for (const row of rows.toSorted((a, b) => b.lost - a.lost)) {
    if (saved >= need - 1e-9) break;
    if (row.lost <= 1e-9 || row.cut + 1 > row.cue.ideal - row.cue.floor) continue;
    row.cut += 1;
    saved += pace(row.cue);
  }
  return rows
    .filter((row) => row.cut > 0)
    .map((row) => ({ cue: row.cue, seconds: seconds(row.cue.ideal - row.cut) }));
}
