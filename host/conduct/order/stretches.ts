import type { PourId } from '../../../core/ids.ts';
import { type Cue, pourOf } from '../../../core/running-order/cue.ts';

/** A stretch of the running order that a host thinks of as one thing: a glass with all its steps, or a single cue. */
export type Stretch =
  | { readonly of: 'glass'; readonly id: string; readonly pour: PourId; readonly cues: readonly Cue[] }
  | { readonly of: 'practice'; readonly id: string; readonly cues: readonly Cue[] }
  | { readonly of: 'cue'; readonly id: string; readonly cue: Cue; readonly cues: readonly Cue[] };

/**
 * Folds a running order of a hundred cues to the dozen lines that can be taken in at a glance. A break called in the
 * middle of a glass stands between its two halves.
 */
export function stretchesOf(order: readonly Cue[]): Stretch[] {
  const stretches: Stretch[] = [];
  for (const cue of order) {
    const last = stretches.at(-1);
    const pour = pourOf(cue);
    if (pour !== undefined) {
      if (last?.of === 'glass' && last.pour === pour)
        replaceLast(stretches, { ...last, cues: [...last.cues, cue] });
      else stretches.push({ of: 'glass', id: cue.id, pour, cues: [cue] });
    } else if (cue.kind === 'practice') {
      if (last?.of === 'practice') replaceLast(stretches, { ...last, cues: [...last.cues, cue] });
      else stretches.push({ of: 'practice', id: cue.id, cues: [cue] });
    } else stretches.push({ of: 'cue', id: cue.id, cue, cues: [cue] });
  }
  return stretches;
}

function replaceLast(stretches: Stretch[], stretch: Stretch): void {
  stretches[stretches.length - 1] = stretch;
}
