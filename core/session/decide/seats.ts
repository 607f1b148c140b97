import type { SeatId } from '../../ids.ts';
import { traitsOf } from '../../running-order/cue-traits.ts';
import type { HostCommand, Moment, TakeSeat } from '../command.ts';
import { type Decision, happened, refused } from '../decision.ts';
import { evolveAll } from '../evolve.ts';
import { mayGiveWay, missedBy } from '../seating.ts';
import type { GuestCommand } from '../sent-command.ts';
import { cueForGuests, ownPourAt } from '../serving.ts';
import { cueNow, type UnderWay } from '../state.ts';
import { weighRoom } from './pace.ts';

type SeatCommand = Extract<
  HostCommand,
  {
    type:
      | 'SetDoors'
      | 'AdmitSeat'
      | 'RemoveSeat'
      | 'RestoreSeat'
      | 'AnswerSeat'
      | 'StopPouring'
      | 'ResumePouring';
  }
>;

/** Somebody without a seat. */
export function decideAtDoor(session: UnderWay, command: TakeSeat, { now }: Moment): Decision {
  if (session.doors === 'closed') return refused('doors-closed');
  if (session.seats[command.seat] !== undefined) return refused('nothing-to-do');
  const { inPlaceOf } = command;
  const leaving = inPlaceOf === undefined ? undefined : session.seats[inPlaceOf];
  if (inPlaceOf !== undefined && (leaving === undefined || !mayGiveWay(session, leaving)))
    return refused('table-full');
  const gaveWay = leaving === undefined ? [] : [{ type: 'SeatGaveWay', seat: leaving.id } as const];
  return happened(...gaveWay, {
    type: 'SeatTaken',
    seat: {
      id: command.seat,
      name: command.name,
      leftHanded: command.leftHanded,
      remote: command.remote,
      presence: session.doors === 'ask' ? 'waiting' : 'seated',
      cautionsRead: false,
      groundRulesAccepted: false,
      onlyWater: false,
      row: leaving?.row ?? Object.keys(session.seats).length,
      kit: [],
      takenAt: now,
      missed: missedBy(session),
    },
  });
}

/** What the host does about a seat. Nothing here touches its notes. */
export function decideSeat(session: UnderWay, command: SeatCommand): Decision {
  if (command.type === 'SetDoors') {
    return session.doors === command.doors
      ? refused('nothing-to-do')
      : happened({ type: 'DoorsSet', doors: command.doors });
  }
  const seat = session.seats[command.seat];
  if (seat === undefined) return refused('no-such-seat');
  switch (command.type) {
    case 'AdmitSeat':
      return seat.presence === 'waiting'
        ? happened({ type: 'SeatAdmitted', seat: seat.id })
        : refused('nothing-to-do');
    case 'RemoveSeat':
      return seat.presence === 'removed'
        ? refused('nothing-to-do')
        : happened({ type: 'SeatRemoved', seat: seat.id });
    case 'RestoreSeat':
      return seat.presence === 'removed' || seat.presence === 'left'
        ? happened({ type: 'SeatRestored', seat: seat.id })
        : refused('nothing-to-do');
    case 'AnswerSeat':
      return session.signals[seat.id] === undefined
        ? refused('nothing-to-do')
        : happened({ type: 'SignalGiven', seat: seat.id, signal: null });
    case 'StopPouring':
      return seat.onlyWater ? refused('nothing-to-do') : happened({ type: 'PouringStopped', seat: seat.id });
    case 'ResumePouring':
      return seat.onlyWater ? happened({ type: 'PouringResumed', seat: seat.id }) : refused('nothing-to-do');
    default:
      return command satisfies never;
  }
}

/** What a guest does for the seat they hold. */
export function decideForGuest(
  session: UnderWay,
  id: SeatId,
  command: GuestCommand,
  moment: Moment,
): Decision {
  const seat = session.seats[id];
  if (seat === undefined) return refused('no-such-seat');
  if (command.type !== 'LeaveTable' && seat.presence !== 'seated') return refused('not-seated');
  switch (command.type) {
    case 'ReadCautions':
      return seat.cautionsRead ? refused('nothing-to-do') : happened({ type: 'CautionsRead', seat: id });
    case 'AcceptGroundRules':
      return seat.groundRulesAccepted
        ? refused('nothing-to-do')
        : happened({ type: 'GroundRulesAccepted', seat: id });
    case 'GiveSignal':
      return giveSignal(session, id, command, moment);
    case 'ChangeSeat':
      return changeSeat(id, command);
    case 'CatchUp': {
      const pour = seat.missed.find((missed) => ownPourAt(session, seat, missed) === command.pour);
      return pour === undefined
        ? refused('nothing-to-do')
        : happened({ type: 'PourCaughtUp', seat: id, pour });
    }
    case 'CheckKit':
      return seat.kit.includes(command.item) === command.ready
        ? refused('nothing-to-do')
        : happened({ type: 'KitChecked', seat: id, item: command.item, ready: command.ready });
    case 'LeaveTable':
      return seat.presence === 'left' || seat.presence === 'removed'
        ? refused('nothing-to-do')
        : happened({ type: 'SeatLeft', seat: id });
    default:
      return command satisfies never;
  }
}

function changeSeat(seat: SeatId, command: Extract<GuestCommand, { type: 'ChangeSeat' }>): Decision {
  const changes = {
    ...(command.name === undefined ? {} : { name: command.name }),
    ...(command.leftHanded === undefined ? {} : { leftHanded: command.leftHanded }),
    ...(command.remote === undefined ? {} : { remote: command.remote }),
  };
  return Object.keys(changes).length === 0
    ? refused('nothing-to-do')
    : happened({ type: 'SeatChanged', seat, ...changes });
}

/** A signal is about the cue it was given in: a late one must not make the next cue look ready. */
function giveSignal(
  session: UnderWay,
  seat: SeatId,
  command: Extract<GuestCommand, { type: 'GiveSignal' }>,
  moment: Moment,
): Decision {
  const cue = cueNow(session).id;
  const known = command.cue === cue || command.cue === cueForGuests(session, cueNow(session));
  if (!known && command.signal !== 'needs-host') return refused('moved-on');
  if (command.signal === 'ready' && !traitsOf(cueNow(session)).asksReady) return refused('nothing-to-do');
  if ((session.signals[seat] ?? null) === command.signal) return refused('nothing-to-do');
  const given = { type: 'SignalGiven', seat, signal: command.signal } as const;
  const after = evolveAll(session, [given]);
  const room = after.status === 'under-way' ? weighRoom(after, cue, moment) : refused('nothing-to-do');
  return happened(given, ...(room.ok ? room.events : []));
}
