import type { PourId } from '../../ids.ts';
import type { HostCommand, Moment } from '../command.ts';
import { type Decision, happened, refused } from '../decision.ts';
import { metByAll } from '../serving.ts';
import { cueNow, type ScreenShows, type UnderWay } from '../state.ts';

type TalkCommand = Extract<
  HostCommand,
  {
    type:
      | 'Remind'
      | 'ClearReminder'
      | 'OpenDiscussion'
      | 'CloseDiscussion'
      | 'Reveal'
      | 'SteerScreen'
      | 'TellResult';
  }
>;

/** What is said and shown in the room: reminders, the discussion, the names, and what the screen is given to. */
export function decideTalk(session: UnderWay, ask: TalkCommand, { now }: Moment): Decision {
  switch (ask.type) {
    case 'Remind':
      return happened({ type: 'ReminderGiven', kind: ask.kind, at: now });
    case 'ClearReminder':
      return session.reminder === null ? refused('nothing-to-do') : happened({ type: 'ReminderCleared' });
    case 'OpenDiscussion': {
      const trouble = notReached(session, ask.pours);
      if (trouble !== undefined) return trouble;
      const pours = ask.pours.filter((pour) => !session.discussions[pour]?.open);
      return pours.length === 0
        ? refused('nothing-to-do')
        : happened({ type: 'DiscussionOpened', pours, at: now });
    }
    case 'CloseDiscussion': {
      const pours = ask.pours.filter((pour) => session.discussions[pour]?.open);
      return pours.length === 0
        ? refused('not-in-discussion')
        : happened({ type: 'DiscussionClosed', pours });
    }
    case 'Reveal': {
      if (ask.from !== undefined && cueNow(session).id !== ask.from) return refused('moved-on');
      const trouble = notReached(session, ask.pours);
      if (trouble !== undefined) return trouble;
      const pours = ask.pours.filter((pour) => !session.revealed.includes(pour));
      return pours.length === 0 ? refused('nothing-to-do') : happened({ type: 'PoursRevealed', pours });
    }
    case 'SteerScreen':
      return sameShown(session.screen, ask.shows)
        ? refused('nothing-to-do')
        : happened({ type: 'ScreenSteered', shows: ask.shows });
    case 'TellResult': {
      const cue = cueNow(session);
      if (cue.id !== ask.cue) return refused('moved-on');
      if (cue.kind !== 'result' || session.results.some((told) => told.cue === cue.id))
        return refused('nothing-to-do');
      const { cue: id, parts } = ask;
      const left = cue.pours.filter((pour) => !session.dropped.includes(pour));
      return (
        notReached(session, left) ?? happened({ type: 'ResultTold', result: { cue: id, at: now, parts } })
      );
    }
    default:
      return ask satisfies never;
  }
}

const sameShown = (one: ScreenShows, other: ScreenShows): boolean =>
  one.is === other.is && (one.is !== 'page' || other.is !== 'page' || one.page === other.page);

/** Nobody talks about, or is told, a glass that has not been in front of everybody [Q1, Q4, F6]. */
function notReached(session: UnderWay, pours: readonly PourId[]): Decision | undefined {
  const known = new Set([...session.plan.pours, ...session.plan.trials].map((each) => each.id));
  if (pours.some((pour) => !known.has(pour))) return refused('no-such-pour');
  const met = metByAll(session);
  if (pours.some((pour) => !met.includes(pour))) return refused('not-reached');
  return undefined;
}
