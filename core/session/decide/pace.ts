import { type CueId, cueId } from '../../ids.ts';
import type { BreakCue } from '../../running-order/cue.ts';
import { traitsOf } from '../../running-order/cue-traits.ts';
import { readySeatsNeeded } from '../../running-order/room-share.ts';
import { between, durationMs, later, type Seconds, seconds, toMs } from '../../units.ts';
import type { HostCommand, Moment } from '../command.ts';
import { type Decision, happened, refused } from '../decision.ts';
import { cueAfter, cueBefore, endingNow, indexOfCue } from '../position.ts';
import { seated } from '../seating.ts';
import { cueNow, type UnderWay } from '../state.ts';
import { entering } from './entering.ts';

type PaceCommand = Extract<
  HostCommand,
  {
    type:
      | 'GoBack'
      | 'JumpTo'
      | 'Hold'
      | 'Resume'
      | 'GiveTime'
      | 'CallBreak'
      | 'ChoosePacing'
      | 'WaitForRemote';
  }
>;

/** [P1] The host's *Next*. */
export function advance(session: UnderWay, from: CueId, moment: Moment): Decision {
  if (cueNow(session).id !== from) return refused('moved-on');
  const next = cueAfter(session);
  return next === undefined ? refused('at-end') : happened(...entering(session, next, 'host', moment));
}

/** [P2, P3, P7, P8] A deadline moves the room on only when the clock paces it, or when the host's device is gone. */
export function expire(session: UnderWay, cue: CueId, moment: Moment): Decision {
  const now = cueNow(session);
  if (now.id !== cue) return refused('moved-on');
  if (now.gate || session.clock.kind === 'held' || moment.now < session.clock.endsAt)
    return refused('nothing-to-do');
  if (moment.overtimeWaits === true) return refused('nothing-to-do');
  const paced = (endingNow(session) === 'clock' && !remoteAwaited(session, moment)) || !moment.hostPresent;
  const next = cueAfter(session);
  return paced && next !== undefined
    ? happened(...entering(session, next, 'clock', moment))
    : refused('nothing-to-do');
}

/**
 * [P12] Whether the host wants to wait for remote guests and one who is connected is not ready. Without the host
 * nobody could end the waiting, so it does not bind then [P8]; nor does it where nobody is asked to be ready [P18].
 */
function remoteAwaited(session: UnderWay, { present }: Moment): boolean {
  if (!session.waitForRemote || !traitsOf(cueNow(session)).asksReady) return false;
  const remote = seated(session).filter((seat) => seat.remote && present.has(seat.id));
  return remote.some((seat) => session.signals[seat.id] !== 'ready');
}

/** [P3] Pacing by the room: on when the chosen share of the seats that are here is ready, never before the floor. */
export function weighRoom(session: UnderWay, cue: CueId, moment: Moment): Decision {
  const now = cueNow(session);
  if (now.id !== cue) return refused('moved-on');
  const next = cueAfter(session);
  if (next === undefined) return refused('nothing-to-do');
  if (roomIsReady(session, moment)) return happened(...entering(session, next, 'room', moment));
  // A deadline that had to wait for remote guests falls due when the last of them is ready.
  return endingNow(session) === 'clock' && session.waitForRemote
    ? expire(session, cue, moment)
    : refused('nothing-to-do');
}

function roomIsReady(session: UnderWay, moment: Moment): boolean {
  const { now, present } = moment;
  const cue = cueNow(session);
  if (session.pacing.by !== 'room' || endingNow(session) !== 'room' || session.clock.kind === 'held')
    return false;
  if (now < later(session.enteredAt, toMs(cue.floor)) || remoteAwaited(session, moment)) return false;
  const here = seated(session).filter((seat) => present.has(seat.id));
  const ready = here.filter((seat) => session.signals[seat.id] === 'ready');
  return here.length > 0 && ready.length >= readySeatsNeeded(session.pacing.share, here.length);
}

export function decidePace(session: UnderWay, command: PaceCommand, moment: Moment): Decision {
  switch (command.type) {
    case 'GoBack': {
      if (cueNow(session).id !== command.from) return refused('moved-on');
      const before = cueBefore(session);
      return before === undefined
        ? refused('at-start')
        : happened(...entering(session, before, 'host', moment, wasMistaken(session, moment)));
    }
    case 'JumpTo': {
      const target = session.cues[indexOfCue(session.cues, command.cue)];
      if (target === undefined) return refused('no-such-cue');
      const takesBack = command.takesBack === cueNow(session).id;
      return happened(...entering(session, target, 'host', moment, takesBack));
    }
    case 'Hold':
      if (session.clock.kind === 'held') return refused('already-held');
      return happened({
        type: 'ClockHeld',
        remaining: between(moment.now, session.clock.endsAt),
        at: moment.now,
      });
    case 'Resume':
      if (session.clock.kind !== 'held') return refused('not-held');
      return happened({ type: 'ClockResumed', endsAt: later(moment.now, session.clock.remaining) });
    case 'GiveTime':
      return giveTime(session, command.seconds, moment);
    case 'CallBreak':
      return callBreak(session, command.seconds, moment);
    case 'ChoosePacing':
      return happened({ type: 'PacingChosen', pacing: command.pacing });
    case 'WaitForRemote':
      return session.waitForRemote === command.wait
        ? refused('nothing-to-do')
        : happened({ type: 'RemoteAwaited', wait: command.wait });
    default:
      return command satisfies never;
  }
}

/** [P20] A Next of the host that is taken back so soon was a slip; what the clock brought, or the room took up, was none. */
const slipMs = 20_000;

function wasMistaken({ timeline, enteredAt }: UnderWay, { now }: Moment): boolean {
  return timeline.at(-1)?.by === 'host' && now < enteredAt + slipMs;
}

/** [P4] A minute more is a minute from now when the time is already over. */
function giveTime(session: UnderWay, more: Seconds, { now }: Moment): Decision {
  const { clock } = session;
  const left = clock.kind === 'held' ? clock.remaining : between(now, clock.endsAt);
  return happened({ type: 'TimeGiven', by: durationMs(toMs(more) - Math.min(0, left)) });
}

function callBreak(session: UnderWay, length: Seconds, moment: Moment): Decision {
  const cue: BreakCue = {
    id: cueId(`called-break-${session.breaksCalled + 1}`),
    kind: 'break',
    called: true,
    ideal: length,
    floor: seconds(Math.min(60, length)),
    stretch: 0,
    gate: true,
  };
  return happened(
    { type: 'BreakCalled', cue, before: cueNow(session).id },
    ...entering(session, cue, 'host', moment),
  );
}
