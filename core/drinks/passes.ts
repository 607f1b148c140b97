import { seconds } from '../units.ts';
import type { StepPlan } from './drink.ts';
import type { Level } from './drink-kinds.ts';
import type { Pass, Sense, Step } from './step.ts';

/**
 * The walk through a glass that the three drinks share, as plain data; a drink changes the seconds.
 * Order, passes and times are common practice, no source: the senses first and without a pen, then the glass
 * again sense by sense with the words put down before the next, then the notes from top to bottom, then thoughts.
 */
export interface PassTimes {
  readonly swirl: number;
  readonly look: number;
  readonly nose: number;
  readonly sip: number;
  readonly spit: number;
  readonly write: Readonly<Record<Sense, number>>;
  readonly review: number;
  readonly reflect: number;
}

/** The least that a step can do its work in, in seconds: below it, people only wave the glass about. */
const floors: Readonly<Record<Step, number>> = {
  swirl: 10,
  look: 10,
  nose: 15,
  sip: 12,
  spit: 10,
  write: 20,
  review: 10,
  reflect: 15,
};

/** Who gives up time first when the evening runs late: thoughts and review, then writing, never the spitting. */
const stretches: Readonly<Record<Step, number>> = {
  swirl: 0.4,
  look: 0.6,
  nose: 0.5,
  sip: 0.3,
  spit: 0,
  write: 0.8,
  review: 1,
  reflect: 1,
};

function step(pass: Pass, name: Step, ideal: number, sense?: Sense): StepPlan {
  return {
    pass,
    step: name,
    ...(sense === undefined ? {} : { sense }),
    ideal: seconds(Math.max(ideal, floors[name])),
    floor: seconds(floors[name]),
    stretch: stretches[name],
  };
}

export function passesWith(times: PassTimes, level: Level, closingPass: boolean, drops = false): StepPlan[] {
  const first = [
    step('first', 'swirl', times.swirl),
    step('first', 'look', times.look),
    step('first', 'nose', times.nose),
    step('first', 'sip', times.sip),
    step('first', 'spit', times.spit),
  ];
  const writing = [
    // The one swirl of a writing pass: the drops go in, and are turned under.
    ...(drops ? [step('writing', 'swirl', times.swirl + 15)] : []),
    step('writing', 'write', times.write.look, 'look'),
    step('writing', 'write', times.write.nose, 'nose'),
    step('writing', 'sip', times.sip),
    step('writing', 'spit', times.spit),
    step('writing', 'write', times.write.palate, 'palate'),
    step('writing', 'write', times.write.finish, 'finish'),
  ];
  const review = step('closing', 'review', times.review);
  const reflect = step('closing', 'reflect', times.reflect);
  switch (level) {
    case 'newcomers':
      // One slow guided pass and a writing pass: no second round of instructions to keep in mind.
      return [...first, ...writing];
    case 'regulars':
      return closingPass ? [...first, ...writing, review] : [...first, ...writing];
    case 'devotees':
      return closingPass ? [...first, ...writing, review, reflect] : [...first, ...writing, review];
  }
}

/** Newcomers are given more time for each sense, devotees more for each word. */
export function timesFor(level: Level, base: PassTimes): PassTimes {
  const senses = level === 'newcomers' ? 1.5 : 1;
  const words = level === 'devotees' ? 1.2 : 1;
  const scaled = (value: number, by: number) => Math.round(value * by);
  return {
    swirl: scaled(base.swirl, senses),
    look: scaled(base.look, senses),
    nose: scaled(base.nose, senses),
    sip: scaled(base.sip, senses),
    spit: base.spit,
    write: {
      look: scaled(base.write.look, words),
      nose: scaled(base.write.nose, words),
      palate: scaled(base.write.palate, words),
      finish: scaled(base.write.finish, words),
    },
    review: base.review,
    reflect: scaled(base.reflect, words),
  };
}
