import type { CueId } from '../../ids.ts';
import type { Cue } from '../../running-order/cue.ts';
import type { Lengths } from '../../running-order/repace.ts';
import type { SessionEvent } from '../event.ts';
import type { UnderWay } from '../state.ts';

/** How events change the lengths of cues, each so that the undoing of one leaves the others as they are. */

export function withLengths(session: UnderWay, lengths: Lengths): UnderWay {
  const byCue = new Map(lengths.map((each) => [each.cue, each.seconds]));
  return { ...session, cues: session.cues.map((cue) => ({ ...cue, ideal: byCue.get(cue.id) ?? cue.ideal })) };
}

/** What the host sets by hand is undone by nothing else. */
export function cueEdited(session: UnderWay, event: Extract<SessionEvent, { type: 'CueEdited' }>): UnderWay {
  const { ideal, floor, say } = event;
  const edit = ({ say: own, ...cue }: Cue): Cue => {
    const words = say ?? own ?? '';
    // Words of no length give the cue back the usual ones.
    return { ...cue, ideal, floor, ...(words === '' ? {} : { say: words }) };
  };
  const others = session.fitted?.filter(({ cue }) => cue !== event.cue) ?? [];
  return {
    ...session,
    cues: session.cues.map((cue) => (cue.id === event.cue ? edit(cue) : cue)),
    fitted: others.length === 0 ? null : others,
    shortTalks: session.shortTalks.filter(({ cue }) => cue !== event.cue),
  };
}

/** A discussion that has been cut to a minute stays so, and gets its whole time when it is restored. */
export function fitUndone(session: UnderWay): UnderWay {
  const before = new Map((session.fitted ?? []).map(({ cue, seconds }) => [cue, seconds]));
  const cut = new Set<CueId>(session.shortTalks.map(({ cue }) => cue));
  return {
    ...withLengths(
      session,
      (session.fitted ?? []).filter(({ cue }) => !cut.has(cue)),
    ),
    fitted: null,
    shortTalks: session.shortTalks.map((talk) => ({ ...talk, ideal: before.get(talk.cue) ?? talk.ideal })),
  };
}

export function discussionsShortened(
  session: UnderWay,
  { cues: cut, to }: Extract<SessionEvent, { type: 'DiscussionsShortened' }>,
): UnderWay {
  const talks = session.cues.filter(({ id }) => cut.includes(id));
  return {
    ...session,
    cues: session.cues.map((cue) => (cut.includes(cue.id) ? { ...cue, ideal: to, floor: to } : cue)),
    shortTalks: [...session.shortTalks, ...talks.map(({ id, ideal, floor }) => ({ cue: id, ideal, floor }))],
  };
}

export function discussionsRestored(session: UnderWay): UnderWay {
  const before = new Map(session.shortTalks.map((talk) => [talk.cue, talk]));
  return {
    ...session,
    cues: session.cues.map((cue) => {
      const was = before.get(cue.id);
      return was === undefined ? cue : { ...cue, ideal: was.ideal, floor: was.floor };
    }),
    shortTalks: [],
  };
}
