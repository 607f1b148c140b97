import { guessSheet } from '../guess/guess-sheet.ts';
import { compile } from '../running-order/compile.ts';
import { noHabits } from '../running-order/forecast.ts';
import type { Command, HostCommand, Moment } from './command.ts';
import { decideGlasses } from './decide/glasses.ts';
import { advance, decidePace, expire, weighRoom } from './decide/pace.ts';
import { decidePlan } from './decide/plan.ts';
import { decideAtDoor, decideForGuest, decideSeat } from './decide/seats.ts';
import { decideTalk } from './decide/talk.ts';
import { type Decision, happened, refused } from './decision.ts';
import type { Session, UnderWay } from './state.ts';

/**
 * The rules of the session: given where it stands and what is asked, what happens. Pure; the time, who is present
 * and new ids arrive with the command. A command that would change nothing is refused, so that the log stays short.
 */
export function decide(session: Session, command: Command, moment: Moment): Decision {
  switch (session.status) {
    case 'unopened':
      return command.by === 'host' && command.ask.type === 'OpenDoors'
        ? openDoors(command.ask, moment)
        : refused('not-open');
    case 'finished':
      if (command.by === 'host' && command.ask.type === 'Reopen') {
        return happened({ type: 'TastingReopened', at: moment.now });
      }
      return refused('finished');
    case 'under-way':
      return decideUnderWay(session, command, moment);
    default:
      return session satisfies never;
  }
}

function openDoors(
  { plan, habits, draw = '' }: Extract<HostCommand, { type: 'OpenDoors' }>,
  { now }: Moment,
): Decision {
  if (plan.pours.length === 0) return refused('no-pours');
  return happened({
    type: 'DoorsOpened',
    plan,
    cues: compile(plan),
    habits: habits ?? noHabits,
    guess: guessSheet(plan, now, draw),
    at: now,
  });
}

function decideUnderWay(session: UnderWay, command: Command, moment: Moment): Decision {
  switch (command.by) {
    case 'host':
      return decideForHost(session, command.ask, moment);
    case 'helper':
      return decideSeat(session, command.ask);
    case 'guest':
      return decideForGuest(session, command.seat, command.ask, moment);
    case 'newcomer':
      return decideAtDoor(session, command.ask, moment);
    case 'clock':
      return command.ask.type === 'ExpireCue'
        ? expire(session, command.ask.cue, moment)
        : weighRoom(session, command.ask.cue, moment);
    default:
      return command satisfies never;
  }
}

function decideForHost(session: UnderWay, ask: HostCommand, moment: Moment): Decision {
  switch (ask.type) {
    case 'OpenDoors':
      return refused('already-open');
    case 'Advance':
      return advance(session, ask.from, moment);
    case 'GoBack':
    case 'JumpTo':
    case 'Hold':
    case 'Resume':
    case 'GiveTime':
    case 'CallBreak':
    case 'ChoosePacing':
    case 'WaitForRemote':
      return decidePace(session, ask, moment);
    case 'SwapBottle':
    case 'MendPour':
    case 'AddPour':
    case 'ReorderGlasses':
      return decideGlasses(session, ask);
    case 'DropPour':
    case 'RestorePour':
    case 'MendTitle':
    case 'EditCue':
    case 'FitTo':
    case 'UndoFit':
    case 'WishEnd':
    case 'DropClosingPass':
    case 'RestoreClosingPass':
    case 'ShortenDiscussions':
    case 'RestoreDiscussions':
      return decidePlan(session, ask, moment);
    case 'Remind':
    case 'ClearReminder':
    case 'OpenDiscussion':
    case 'CloseDiscussion':
    case 'Reveal':
    case 'SteerScreen':
    case 'TellResult':
      return decideTalk(session, ask, moment);
    case 'SetDoors':
    case 'AdmitSeat':
    case 'RemoveSeat':
    case 'RestoreSeat':
    case 'AnswerSeat':
    case 'StopPouring':
    case 'ResumePouring':
      return decideSeat(session, ask);
    case 'Finish':
      return happened({ type: 'TastingFinished', at: moment.now });
    case 'Reopen':
      return refused('not-finished');
    default:
      return ask satisfies never;
  }
}
