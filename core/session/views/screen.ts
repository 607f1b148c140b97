import type { CueId } from '../../ids.ts';
import { cueForGuests } from '../serving.ts';
import { cueNow, type Finished, type ScreenShows, type UnderWay } from '../state.ts';

/** What the host gives the room's screens to [F8]; to screens that were let in only, beside the stage. */
export interface ScreenView {
  /** It holds while this cue shows, as the stage names it; null once the evening is over. */
  readonly cue: CueId | null;
  readonly shows: ScreenShows;
}

export const screenView = (session: UnderWay | Finished): ScreenView => ({
  cue: session.status === 'finished' ? null : cueForGuests(session, cueNow(session)),
  shows: session.screen,
});
