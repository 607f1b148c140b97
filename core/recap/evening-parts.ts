import type { CueId, PourId } from '../ids.ts';
import { type Cue, pourOf } from '../running-order/cue.ts';
import { type PartKind, traitsOf } from '../running-order/cue-traits.ts';

export interface Part {
  readonly kind: PartKind;
  /** For a glass: the pour that the running order names; with own orders it stands for the place. */
  readonly pour: PourId | null;
  /** A break that the host called: nothing was planned for it. */
  readonly called: boolean;
  readonly cues: readonly CueId[];
}

/** A running order of a hundred cues folded to a dozen parts. A glass that a break interrupted is still one part. */
export function partsOf(order: readonly Cue[]): Part[] {
  const parts: Part[] = [];
  for (const cue of order) {
    const kind = traitsOf(cue).part;
    const pour = pourOf(cue) ?? null;
    const called = cue.kind === 'break' && cue.called;
    const joins =
      kind === 'glass'
        ? parts.findIndex((part) => part.pour === pour)
        : parts.findIndex(
            (part, index) => index === parts.length - 1 && part.kind === kind && kind !== 'break',
          );
    const part = parts[joins];
    if (part === undefined) parts.push({ kind, pour, called, cues: [cue.id] });
    else parts[joins] = { ...part, cues: [...part.cues, cue.id] };
  }
  return parts;
}
