import type { Move, Pass, Sense, Step } from '../drinks/step.ts';
import type { PourId } from '../ids.ts';
import type { BreakCue, Cue, PlainCueKind, ResultCue, RoundCue, StepCue } from './cue-schema.ts';

export type { BreakCue, Cue, Move, Pass, PlainCueKind, ResultCue, RoundCue, Sense, Step, StepCue };

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
