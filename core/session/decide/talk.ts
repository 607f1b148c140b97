import type { PourId } from '../../ids.ts';
import type { HostCommand, Moment } from '../command.ts';
import { type Decision, happened, refused } from '../decision.ts';
import { metByAll } from '../serving.ts';
import type { UnderWay } from '../state.ts';

type TalkCommand = Extract<
  HostCommand,
  { type: 'Remind' | 'ClearReminder' | 'OpenDiscussion' | 'CloseDiscussion' | 'Reveal' }
>;

/** What is said in the room: reminders, the discussion, the names. */
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
      const trouble = notReached(session, ask.pours);
      if (trouble !== undefined) return trouble;
      const pours = ask.pours.filter((pour) => !session.revealed.includes(pour));
      return pours.length === 0 ? refused('nothing-to-do') : happened({ type: 'PoursRevealed', pours });
    }
    default:
      return ask satisfies never;
  }
}

/** Nobody talks about, or is told, a glass that has not been in front of everybody [Q1, Q4, F6]. */
function notReached(session: UnderWay, pours: readonly PourId[]): Decision | undefined {
  const known = new Set([...session.plan.pours, ...session.plan.trials].map((each) => each.id));
  if (pours.some((pour) => !known.has(pour))) return refused('no-such-pour');
  const met = metByAll(session);
  if (pours.some((pour) => !met.includes(pour))) return refused('not-reached');
  return undefined;
}
