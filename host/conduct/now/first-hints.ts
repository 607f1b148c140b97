import type { Cue, CueKind, Step } from '../../../core/running-order/cue.ts';
import type { HostWords } from '../../../shared/language/en/host.ts';
import { keepText, keptText } from '../../../shared/page/device-storage.ts';

/** What a host is told once, at the moment when it helps, on the first evening that they conduct with a device. */
export type FirstHint = keyof HostWords['room']['firstHints'];

/** The hint for this cue, if there is one that this device has not given yet. */
export function firstHintAt(cue: Cue, given: ReadonlySet<string>): FirstHint | undefined {
  const hint = hintFor(cue);
  return hint === undefined || given.has(hint) ? undefined : hint;
}

const atKinds: Readonly<Partial<Record<CueKind, FirstHint>>> = {
  gathering: 'next',
  'ground-rules': 'table',
  water: 'tools',
};
const atSteps: Readonly<Partial<Record<Step, FirstHint>>> = { swirl: 'time', nose: 'back' };

function hintFor(cue: Cue): FirstHint | undefined {
  return 'step' in cue ? atSteps[cue.step] : atKinds[cue.kind];
}

const place = 'quietpour.host-hints';

export const hintsGiven = (): ReadonlySet<string> => new Set((keptText(place) ?? '').split(' '));

/** What is told or offered once beside the hints of single cues. */
export type OnceTold = FirstHint | 'steps-run';

/** Where storage is refused it is told again after the next load of the page. */
export function giveHint(hint: OnceTold): void {
  keepText(place, [...hintsGiven(), hint].join(' ').trim());
}
