import type { CueId, PourId } from '../ids.ts';
import type { CueKind } from '../running-order/cue.ts';
import type { PartKind } from '../running-order/cue-traits.ts';
import type { Finished } from '../session/state.ts';
import { type EpochMs, type Seconds, seconds } from '../units.ts';
import { partsOf } from './evening-parts.ts';
import type { Foretold } from './foretold.ts';
import type { AsPlanned } from './planned-course.ts';

/** The evening against its plan. Nobody paces the gathering, so it is in no total. */
export interface Timing {
  readonly openedAt: EpochMs;
  readonly finishedAt: EpochMs;
  /** From the welcome on. */
  readonly planned: Seconds;
  readonly took: Seconds;
  /** Below 0 when it took less than planned. */
  readonly overrun: Seconds;
  readonly meaning: 'as-planned' | 'ran-over' | 'ended-early' | 'never-began';
  readonly breaks: {
    readonly planned: number;
    readonly plannedSeconds: Seconds;
    readonly taken: number;
    readonly takenSeconds: Seconds;
    /** Of those taken, how many the host called. */
    readonly called: number;
  };
  /** What was said of the end meanwhile. */
  readonly foretold: readonly Foretold[];
  readonly parts: readonly TimedPart[];
  readonly cues: readonly TimedCue[];
  /** What the room was at, one after the other: a part that was gone back to stands here twice. */
  readonly stretches: readonly Stretch[];
}

export interface TimedPart {
  readonly kind: PartKind;
  readonly pour: PourId | null;
  readonly called: boolean;
  readonly planned: Seconds;
  /** Null when the room was never there. */
  readonly took: Seconds | null;
}

export interface TimedCue {
  readonly cue: CueId;
  readonly kind: CueKind;
  /** Index into `parts`. */
  readonly part: number;
  readonly planned: Seconds;
  readonly took: Seconds | null;
}

interface Stretch {
  /** Index into `parts`. */
  readonly part: number;
  /** Seconds after the doors opened, without the time in which the evening was closed. */
  readonly from: Seconds;
  readonly to: Seconds;
}

interface Visit {
  readonly cue: CueId;
  readonly from: Seconds;
  readonly to: Seconds;
}

/** An evening within five minutes or a twentieth of its plan went as planned: our own measure, no source. */
const tolerance = (planned: number): number => Math.max(300, planned / 20);

export function timingOf(session: Finished, { cues: planned, closed, foretold }: AsPlanned): Timing {
  const visits = visitsOf(session, closed);
  const parts = partsOf(session.cues);
  const partOf = new Map(parts.flatMap((part, index) => part.cues.map((cue) => [cue, index])));
  const ideal = new Map(planned.map((cue) => [cue.id, cue.ideal]));
  const cues = session.cues.map((cue): TimedCue => {
    const own = visits.filter((visit) => visit.cue === cue.id);
    return {
      cue: cue.id,
      kind: cue.kind,
      part: partOf.get(cue.id) ?? 0,
      planned: ideal.get(cue.id) ?? seconds(0),
      took: own.length === 0 ? null : sum(own.map(({ from, to }) => to - from)),
    };
  });
  const timed = parts.map(({ kind, pour, called }, index): TimedPart => {
    const own = cues.filter(({ part }) => part === index);
    const took = own.flatMap((cue) => cue.took ?? []);
    return {
      kind,
      pour,
      called,
      planned: sum(own.map((cue) => cue.planned)),
      took: took.length === 0 ? null : sum(took),
    };
  });
  const paced = timed.filter(({ kind }) => kind !== 'gathering');
  const wanted = sum(paced.map((part) => part.planned));
  const took = sum(paced.map((part) => part.took ?? 0));
  const overrun = seconds(took - wanted);
  return {
    openedAt: session.openedAt,
    finishedAt: session.finishedAt,
    planned: wanted,
    took,
    overrun,
    meaning: meaningOf(wanted, took, overrun),
    breaks: breaksOf(timed),
    foretold,
    parts: timed,
    cues,
    stretches: stretchesOf(visits, partOf),
  };
}

function visitsOf({ timeline, openedAt, finishedAt }: Finished, closed: AsPlanned['closed']): Visit[] {
  const gone = (at: number) => closed.reduce((all, { from, to }) => all + (to <= at ? to - from : 0), 0);
  return timeline.map(({ cue, at }, index) => {
    const next = timeline[index + 1]?.at ?? finishedAt;
    // The last step before the evening was closed ended then, not when it was opened again.
    const end = closed.find(({ from, to }) => from >= at && to <= next)?.from ?? next;
    const start = at - openedAt - gone(at);
    return { cue, from: seconds(start / 1000), to: seconds((start + Math.max(0, end - at)) / 1000) };
  });
}

function stretchesOf(visits: readonly Visit[], partOf: ReadonlyMap<CueId, number>): Stretch[] {
  const stretches: Stretch[] = [];
  for (const { cue, from, to } of visits) {
    const part = partOf.get(cue);
    const last = stretches.at(-1);
    if (part === undefined) continue;
    if (last?.part === part) stretches[stretches.length - 1] = { ...last, to };
    else stretches.push({ part, from, to });
  }
  return stretches;
}

function breaksOf(parts: readonly TimedPart[]): Timing['breaks'] {
  const breaks = parts.filter(({ kind }) => kind === 'break');
  const planned = breaks.filter(({ called }) => !called);
  const taken = breaks.filter(({ took }) => took !== null);
  return {
    planned: planned.length,
    plannedSeconds: sum(planned.map((each) => each.planned)),
    taken: taken.length,
    takenSeconds: sum(taken.map(({ took }) => took ?? 0)),
    called: taken.filter(({ called }) => called).length,
  };
}

function meaningOf(planned: number, took: number, overrun: number): Timing['meaning'] {
  if (took === 0) return 'never-began';
  if (Math.abs(overrun) <= tolerance(planned)) return 'as-planned';
  return overrun > 0 ? 'ran-over' : 'ended-early';
}

const sum = (values: readonly number[]): Seconds => seconds(values.reduce((all, value) => all + value, 0));
