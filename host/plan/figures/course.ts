import { compile } from '../../../core/running-order/compile.ts';
import { type Cue, pourOf } from '../../../core/running-order/cue.ts';
import type { Plan } from '../../../core/tasting.ts';

/** A stretch of the evening that a host thinks of as one: a glass with its water, a talk, a break. */
export interface CourseStretch {
  readonly key: string;
  readonly what: Exclude<Cue['kind'], 'step' | 'water'> | 'pour';
  readonly pour?: string;
  readonly flight?: number;
  /** From the opening of the doors. */
  readonly startSeconds: number;
  readonly seconds: number;
  readonly cues: readonly Cue[];
}

/** The running order gathered into stretches with their times from the opening of the doors. */
export function courseOf(plan: Plan): readonly CourseStretch[] {
  const stretches: CourseStretch[] = [];
  let at = 0;
  for (const cue of compile(plan)) {
    const pour = pourOf(cue);
    const what = cue.kind === 'step' || cue.kind === 'water' ? 'pour' : cue.kind;
    const last = stretches.at(-1);
    if (last !== undefined && last.what === what && last.pour === pour) {
      stretches[stretches.length - 1] = {
        ...last,
        seconds: last.seconds + cue.ideal,
        cues: [...last.cues, cue],
      };
    } else {
      const flight = cue.kind === 'step' || cue.kind === 'water' ? { flight: cue.flight } : {};
      stretches.push({
        key: cue.id,
        what,
        ...(pour === undefined ? {} : { pour }),
        ...flight,
        startSeconds: at,
        seconds: cue.ideal,
        cues: [cue],
      });
    }
    at += cue.ideal;
  }
  return stretches;
}

/** To the whole minute, in seconds. */
const toMinute = (seconds: number): number => Math.round(seconds / 60) * 60;

/** Start and length in seconds of whole minutes, cut so that what is shown adds up to the whole as it is shown. */
export function shownTimes({ startSeconds, seconds }: Pick<CourseStretch, 'startSeconds' | 'seconds'>): {
  readonly start: number;
  readonly length: number;
} {
  const start = toMinute(startSeconds);
  return { start, length: toMinute(startSeconds + seconds) - start };
}

export const lengthOf = (course: readonly CourseStretch[]): number =>
  course.reduce((sum, { seconds }) => sum + seconds, 0);
