import type { Plan } from '../tasting.ts';
import { compile } from './compile.ts';
import type { Cue } from './cue.ts';
import { traitsOf } from './cue-traits.ts';
import { type Habits, noHabits } from './forecast.ts';
import {
  drawLuck,
  normalsFrom,
  playEvening,
  type Random,
  type Range,
  type Rehearsed,
  rangeOf,
} from './rehearsal.ts';
import { tempoOfPlan } from './tempo.ts';

/** A part of the evening whose end a host looks at the clock for. */
export interface RehearsedPart {
  readonly part: 'opening' | 'flight' | 'closing';
  /** From 0; of flights only. */
  readonly flight: number | null;
  /** Seconds from the opening of the doors to its end as planned, and as it was in the rehearsed evenings. */
  readonly planned: number;
  readonly ended: Range;
  /** Share of the evenings in which it ended after its planned time. */
  readonly behind: number;
  /** Seconds by which it lasted longer than planned on average, whenever it began; below 0 where it was shorter. */
  readonly overran: number;
}

/** A change of the plan and what it would do. */
export interface Advice {
  readonly change: Change;
  /** Seconds by which the evening is shorter on average. */
  readonly saves: number;
  /** Share of the evenings that end by the wished time then. */
  readonly inTime: number;
}
const changes = ['closing-pass', 'shorter-writing', 'shorter-talk', 'last-pour', 'practice'] as const;
export type Change = (typeof changes)[number];

export interface RehearsalReport {
  readonly evenings: number;
  /** Seconds from the opening of the doors. */
  readonly planned: number;
  readonly length: Range;
  readonly parts: readonly RehearsedPart[];
  readonly wished: number;
  /** Share of the evenings that end by the wished time. */
  readonly inTime: number;
  /** Most saved first; only what saves at least a minute. */
  readonly advice: readonly Advice[];
}

export interface RehearsalTask {
  readonly plan: Plan;
  readonly evenings: number;
  /** Seconds from the opening of the doors by which the host would like to be done. */
  readonly wished: number;
  readonly habits?: Habits;
}

/** What could be changed of a plan to make it shorter; undefined where there is nothing of the kind. */
export function changed(plan: Plan, change: Change): Plan | undefined {
  switch (change) {
    case 'closing-pass':
      return plan.closingPass && plan.level !== 'newcomers' ? { ...plan, closingPass: false } : undefined;
    case 'shorter-writing':
      return plan.pace.write > 0.5 ? withPace(plan, 'write') : undefined;
    case 'shorter-talk':
      return plan.pace.discussion > 0.5 ? withPace(plan, 'discussion') : undefined;
    case 'last-pour':
      return withoutLastPour(plan);
    case 'practice':
      return plan.practice ? { ...plan, practice: false } : undefined;
    default:
      return change satisfies never;
  }
}

/** A quarter less of its usual time, as a tap on the plan page does. */
const withPace = (plan: Plan, what: 'write' | 'discussion'): Plan => ({
  ...plan,
  pace: { ...plan.pace, [what]: Math.max(0.5, plan.pace[what] - 0.25) },
});

function withoutLastPour(plan: Plan): Plan | undefined {
  const last = plan.pours.at(-1);
  if (last === undefined || plan.pours.length === 1) return undefined;
  // A trial may be served with it, and drawn rows cover it; the session mends neither.
  if (plan.ownOrders || plan.trials.some(({ a, b }) => a === last.id || b === last.id)) return undefined;
  return { ...plan, pours: plan.pours.slice(0, -1) };
}

/**
 * Plays evenings of a plan, each with its own luck, and yields how many are done after each; returns what came of
 * them. The same random numbers give the same report.
 */
export function* rehearse(
  { plan, evenings, wished, habits = noHabits }: RehearsalTask,
  random: Random,
): Generator<number, RehearsalReport> {
  const rehearsed = (each: Plan): Rehearsed => ({
    cues: compile(each),
    habits,
    ...tempoOfPlan(each),
  });
  const base = rehearsed(plan);
  const others = changes.flatMap((change) => {
    const other = changed(plan, change);
    return other === undefined ? [] : [{ change, played: rehearsed(other), lengths: [] as number[] }];
  });
  const parts = partsOf(base.cues);
  const ends: number[][] = parts.map(() => []);
  const lasted: number[][] = parts.map(() => []);
  const lengths: number[] = [];
  const normal = normalsFrom(random);
  for (let evening = 1; evening <= evenings; evening += 1) {
    const luck = drawLuck(base, normal);
    const taken = playEvening(base, luck);
    parts.forEach(({ from, to }, index) => {
      ends[index]?.push(sum(taken.slice(0, to)));
      lasted[index]?.push(sum(taken.slice(from, to)));
    });
    lengths.push(sum(taken));
    for (const other of others) other.lengths.push(sum(playEvening(other.played, luck)));
    yield evening;
  }
  const ideals = base.cues.map(({ ideal }) => ideal);
  const inTime = (values: readonly number[]) => share(values, (length) => length <= wished);
  const mean = (values: readonly number[]) => (values.length === 0 ? 0 : sum(values) / values.length);
  return {
    evenings,
    planned: sum(ideals),
    length: rangeOf(lengths),
    parts: parts.map(({ part, flight, from, to }, index) => {
      const planned = sum(ideals.slice(0, to));
      return {
        part,
        flight,
        planned,
        ended: rangeOf(ends[index] ?? []),
        behind: share(ends[index] ?? [], (end) => end > planned),
        overran: mean(lasted[index] ?? []) - sum(ideals.slice(from, to)),
      };
    }),
    wished,
    inTime: inTime(lengths),
    advice: others
      .map(({ change, lengths: shorter }) => ({
        change,
        saves: mean(lengths) - mean(shorter),
        inTime: inTime(shorter),
      }))
      .filter(({ saves }) => saves >= 60)
      .toSorted((a, b) => b.saves - a.saves),
  };
}

interface Part extends Pick<RehearsedPart, 'part' | 'flight'> {
  /** Indices of the first cue and of the one after the last. */
  readonly from: number;
  readonly to: number;
}

/** Until the first glass; then each flight with the break before it and the talk after it; then what closes the evening. */
function partsOf(cues: readonly Cue[]): Part[] {
  const parts: Part[] = [];
  cues.forEach((cue, index) => {
    const kind = partOf(cue) ?? parts.at(-1)?.part ?? 'opening';
    const last = parts.at(-1);
    const flights = parts.filter(({ part }) => part === 'flight').length;
    const begins = cue.kind === 'break' || ('flight' in cue && cue.flight === flights);
    if (last !== undefined && last.part === kind && !(kind === 'flight' && begins))
      parts[parts.length - 1] = { ...last, to: index + 1 };
    else parts.push({ part: kind, flight: kind === 'flight' ? flights : null, from: index, to: index + 1 });
  });
  return parts;
}

/** The part that a cue tells; undefined for one that belongs to where it stands. */
function partOf(cue: Cue): RehearsedPart['part'] | undefined {
  const { part } = traitsOf(cue);
  switch (part) {
    case 'gathering':
    case 'opening':
      return 'opening';
    case 'glass':
    case 'break':
      return 'flight';
    case 'farewell':
      return 'closing';
    case 'choosing':
    case 'talk':
      // The rounds at the end of the evening have it in their id, as `compile` makes them.
      return cue.id.startsWith('evening/') ? 'closing' : undefined;
    default:
      return part satisfies never;
  }
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const share = (values: readonly number[], holds: (value: number) => boolean): number =>
  values.length === 0 ? 0 : values.filter(holds).length / values.length;
