import type { PourId } from '../../ids.ts';
import { isClosing, pourOf } from '../../running-order/cue.ts';
import { guardedLength, shortTalk } from '../../running-order/cue-traits.ts';
import { spareTalk } from '../../running-order/offers.ts';
import { seconds } from '../../units.ts';
import type { HostCommand, Moment } from '../command.ts';
import { type Decision, happened, refused } from '../decision.ts';
import { fitTo } from '../fitting.ts';
import { cueAfter, indexOfCue, playable } from '../position.ts';
import { cueNow, type UnderWay } from '../state.ts';
import { entering } from './entering.ts';

type PlanCommand = Extract<
  HostCommand,
  {
    type:
      | 'DropPour'
      | 'RestorePour'
      | 'MendTitle'
      | 'EditCue'
      | 'FitTo'
      | 'UndoFit'
      | 'WishEnd'
      | 'DropClosingPass'
      | 'RestoreClosingPass'
      | 'ShortenDiscussions'
      | 'RestoreDiscussions';
  }
>;

/** Changes of the plan while the evening runs [P6]. */
export function decidePlan(session: UnderWay, command: PlanCommand, moment: Moment): Decision {
  switch (command.type) {
    case 'DropPour':
      return dropPour(session, command.pour, moment);
    case 'RestorePour':
      return session.dropped.includes(command.pour)
        ? happened({ type: 'PourRestored', pour: command.pour })
        : refused('not-dropped');
    case 'MendTitle':
      return session.plan.title === command.title
        ? refused('nothing-to-do')
        : happened({ type: 'TitleMended', title: command.title });
    case 'EditCue': {
      const cue = session.cues[indexOfCue(session.cues, command.cue)];
      if (cue === undefined) return refused('no-such-cue');
      const ideal = command.seconds === undefined ? cue.ideal : guardedLength(cue, command.seconds);
      return happened({
        type: 'CueEdited',
        cue: cue.id,
        ideal,
        floor: seconds(Math.min(cue.floor, ideal)),
        ...(command.say === undefined ? {} : { say: command.say }),
      });
    }
    case 'FitTo': {
      const { endsAt } = command;
      const { lengths, was } = fitTo(session, endsAt, moment.now);
      return lengths.length === 0
        ? refused('nothing-to-do')
        : happened({ type: 'RunningOrderFitted', lengths, was, endsAt });
    }
    case 'UndoFit':
      return session.fitted === null ? refused('not-fitted') : happened({ type: 'FitUndone' });
    case 'WishEnd':
      return session.wishedEnd === command.endsAt
        ? refused('nothing-to-do')
        : happened({ type: 'EndWished', endsAt: command.endsAt });
    case 'DropClosingPass':
      return dropClosingPass(session, moment);
    case 'RestoreClosingPass':
      return session.closingDropped ? happened({ type: 'ClosingPassRestored' }) : refused('not-dropped');
    case 'ShortenDiscussions': {
      const ahead = playable(session).flatMap((index) =>
        index > session.at ? (session.cues[index] ?? []) : [],
      );
      const cues = ahead.filter((cue) => spareTalk(cue) > 0);
      return cues.length === 0
        ? refused('nothing-to-do')
        : happened({ type: 'DiscussionsShortened', cues: cues.map(({ id }) => id), to: shortTalk });
    }
    case 'RestoreDiscussions':
      return session.shortTalks.length === 0
        ? refused('nothing-to-do')
        : happened({ type: 'DiscussionsRestored' });
    default:
      return command satisfies never;
  }
}

/** Dropping the pour that everybody has in hand moves the room on to what comes after it. */
function dropPour(session: UnderWay, pour: PourId, moment: Moment): Decision {
  if (!session.plan.pours.some((each) => each.id === pour)) return refused('no-such-pour');
  if (session.dropped.includes(pour)) return refused('already-dropped');
  if (session.dropped.length === session.plan.pours.length - 1) return refused('only-pour');
  const without: UnderWay = { ...session, dropped: [...session.dropped, pour] };
  const next = pourOf(cueNow(session)) === pour ? cueAfter(without) : undefined;
  return happened(
    { type: 'PourDropped', pour },
    ...(next === undefined ? [] : entering(without, next, 'host', moment)),
  );
}

/** [P14] In the middle of a closing pass the room moves on to what comes after it. */
function dropClosingPass(session: UnderWay, moment: Moment): Decision {
  if (session.closingDropped) return refused('already-dropped');
  const without: UnderWay = { ...session, closingDropped: true };
  if (!session.cues.some((cue, index) => index >= session.at && isClosing(cue)))
    return refused('nothing-to-do');
  const next = isClosing(cueNow(session)) ? cueAfter(without) : undefined;
  return happened(
    { type: 'ClosingPassDropped' },
    ...(next === undefined ? [] : entering(without, next, 'host', moment)),
  );
}
