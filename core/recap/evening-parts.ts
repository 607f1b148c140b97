import type { CueId, PourId } from '../ids.ts';
import { type Cue, pourOf } from '../running-order/cue.ts';

/** A part of the evening as a host thinks of it. `glass`: all steps of one glass, and the water after it. */
export type PartKind = 'gathering' | 'opening' | 'glass' | 'choosing' | 'talk' | 'break' | 'farewell';

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
    const kind = kindOf(cue);
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

function kindOf(cue: Cue): PartKind {
  switch (cue.kind) {
    case 'gathering':
    case 'break':
    case 'farewell':
      return cue.kind;
    case 'welcome':
    case 'ground-rules':
    case 'practice':
      return 'opening';
    case 'step':
    case 'water':
      return 'glass';
    case 'ranking':
    case 'odd-one-out':
      return 'choosing';
    case 'discussion':
    case 'reveal':
      return 'talk';
    default:
      return cue satisfies never;
  }
}
