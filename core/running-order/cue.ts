import type { Move, Pass, Sense, Step } from '../drinks/step.ts';
import type { CueId, PourId } from '../ids.ts';
import type { Told } from '../panel/round-result.ts';
import type { Seconds } from '../units.ts';

export type { Move, Pass, Sense, Step };

/**
 * One item of the running order: what everybody does now, and for how long. A plan compiles to a flat list of cues;
 * the session is a pointer into it.
 */
interface CueBase {
  readonly id: CueId;
  /** The time that the host would like to give. */
  readonly ideal: Seconds;
  /** The least time; re-pacing never goes below it. */
  readonly floor: Seconds;
  /** How willingly this cue gives up time when the evening runs late: 0 never, 1 first. */
  readonly stretch: number;
  /** Only the host can leave a gate; the clock and the room wait there. */
  readonly gate: boolean;
  /** The host's own words to say aloud, instead of the usual ones. */
  readonly say?: string;
}

export type PlainCueKind = 'gathering' | 'welcome' | 'ground-rules' | 'farewell';

interface PlainCue extends CueBase {
  readonly kind: PlainCueKind;
}

interface PracticeCue extends CueBase {
  readonly kind: 'practice';
  readonly step: Move;
}

export interface StepCue extends CueBase {
  readonly kind: 'step';
  /** From 0. */
  readonly flight: number;
  readonly pour: PourId;
  readonly pass: Pass;
  readonly step: Step;
  /** With `write`: the glass is taken up again for this sense, and its words are put down. */
  readonly sense?: Sense;
}

/** A rest for the palate after a pour. */
interface WaterCue extends CueBase {
  readonly kind: 'water';
  readonly flight: number;
  readonly after: PourId;
}

export interface BreakCue extends CueBase {
  readonly kind: 'break';
  /** `called`: the host called it in mid-evening; the plan knows nothing of it. */
  readonly called: boolean;
}

/** Three coded glasses, two alike: which is the odd one? */
interface TrialCue extends CueBase {
  readonly kind: 'odd-one-out';
  /** Stands for the three glasses as a pour does for one, so that nothing on the wire tells which is which. */
  readonly trial: PourId;
  readonly a: PourId;
  readonly b: PourId;
}

/** Something that concerns several pours at once. */
export interface RoundCue extends CueBase {
  readonly kind: 'ranking' | 'discussion' | 'reveal';
  readonly pours: readonly PourId[];
}

/**
 * What the room made of its glasses is told: of these pours the orders in which they were put, how much each was liked, or
 * both. It tells every ranking whose pours are all among its own.
 */
export interface ResultCue extends CueBase {
  readonly kind: 'result';
  readonly pours: readonly PourId[];
  readonly tells: readonly Told[];
}

export type Cue = PlainCue | PracticeCue | StepCue | WaterCue | BreakCue | TrialCue | RoundCue | ResultCue;
export type CueKind = Cue['kind'];

/** The pour in front of everybody during this cue, if there is one. */
export const pourOf = (cue: Cue): PourId | undefined =>
  cue.kind === 'step' ? cue.pour : cue.kind === 'water' ? cue.after : undefined;

/** Every page of the notebook that this cue is about: pours, and an odd-one-out as one. */
export function poursOf(cue: Cue): readonly PourId[] {
  if ('pours' in cue) return cue.pours;
  if (cue.kind === 'odd-one-out') return [cue.trial];
  const pour = pourOf(cue);
  return pour === undefined ? [] : [pour];
}

/** The pours that have to be poured for it: of an odd-one-out both. */
export const pouredFor = (cue: Cue): readonly PourId[] =>
  cue.kind === 'odd-one-out' ? [cue.a, cue.b] : poursOf(cue);

/** Of the pass that ends a glass, and that may be left out as a whole [P14]. */
export const isClosing = (cue: Cue): boolean => cue.kind === 'step' && cue.pass === 'closing';

/** Whether this is the step at which everybody adds the drops of water: the swirl that opens a writing pass. */
export const addsDrops = ({ pass, step }: Pick<StepCue, 'pass' | 'step'>): boolean =>
  pass === 'writing' && step === 'swirl';
