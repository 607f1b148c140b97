import type { Cue } from '../running-order/cue.ts';
import type { SessionEvent } from '../session/event.ts';
import type { EpochMs } from '../units.ts';
import { type Foretold, foretoldBy } from './foretold.ts';

/** What a session forgets and its log remembers, for comparing an evening with its plan. */
export interface AsPlanned {
  /** The running order as the doors opened, before anything was edited, fitted or called. */
  readonly cues: readonly Cue[];
  /** Stretches in which the evening was over before the host opened it again. */
  readonly closed: readonly { readonly from: EpochMs; readonly to: EpochMs }[];
  readonly foretold: readonly Foretold[];
}

export function asPlanned(events: readonly SessionEvent[]): AsPlanned {
  const opened = events.find((event) => event.type === 'DoorsOpened');
  const closed: { from: EpochMs; to: EpochMs }[] = [];
  let finishedAt: EpochMs | undefined;
  for (const event of events) {
    if (event.type === 'TastingFinished') finishedAt = event.at;
    else if (event.type === 'TastingReopened' && finishedAt !== undefined) {
      closed.push({ from: finishedAt, to: event.at });
      finishedAt = undefined;
    }
  }
  return { cues: opened?.cues ?? [], closed, foretold: foretoldBy(events) };
}
