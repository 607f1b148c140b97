import type { Cue } from '../../core/running-order/cue.ts';

/** [C1] Every sip is followed by spit, water stands between pours, and flights are parted by breaks. */
export function careTrouble(cues: readonly Cue[]): string[] {
  const troubles: string[] = [];
  cues.forEach((cue, index) => {
    const next = cues[index + 1];
    const sips = 'step' in cue && cue.step === 'sip';
    if (sips && !(next !== undefined && 'step' in next && next.step === 'spit'))
      troubles.push(`${cue.id} is not followed by spitting.`);
    if (cue.kind !== 'step') return;
    const later = cues.findIndex((each, at) => at > index && each.kind === 'step');
    const then = cues[later];
    if (then?.kind !== 'step' || then.pour === cue.pour) return;
    const between = cues.slice(index + 1, later);
    if (!between.some((each) => each.kind === 'water')) troubles.push(`No water stands after ${cue.pour}.`);
    if (then.flight !== cue.flight && !between.some((each) => each.kind === 'break'))
      troubles.push(`No break parts flight ${cue.flight + 1} from the next.`);
  });
  return troubles;
}
