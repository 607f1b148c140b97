import type { SeatId } from '../../ids.ts';
import { traitsOf } from '../../running-order/cue-traits.ts';
import type { GuestCommand, HostCommand, Moment, TakeSeat } from '../command.ts';
import { type Decision, happened, refused } from '../decision.ts';
import { evolveAll } from '../evolve.ts';
import { mayGiveWay, missedBy } from '../seating.ts';
import { cueForGuests, ownPourAt } from '../serving.ts';
import { cueNow, type UnderWay } from '../state.ts';
import { weighRoom } from './pace.ts';

type SeatCommand = Extract<
  HostCommand,
  { type: 'SetDoors' | 'AdmitSeat' | 'RemoveSeat' | 'RestoreSeat' | 'AnswerSeat' }
>;

/** Somebody without a seat. */
export function decideAtDoor(session: UnderWay, ask: TakeSeat, { now }: Moment): Decision {
  if (session.doors === 'closed') return refused('doors-closed');
  if (session.seats[ask.seat] !== undefined) return refused('nothing-to-do');
  const { inPlaceOf } = ask;
  const leaving = inPlaceOf === undefined ? undefined : session.seats[inPlaceOf];
  if (inPlaceOf !== undefined && (leaving === undefined || !mayGiveWay(session, leaving)))
    return refused('table-full');
  const gaveWay = leaving === undefined ? [] : [{ type: 'SeatGaveWay', seat: leaving.id } as const];
  return happened(...gaveWay, {
    type: 'SeatTaken',
    seat: {
      id: ask.seat,
      name: ask.name,
      leftHanded: ask.leftHanded,
      remote: ask.remote,
      presence: session.doors === 'ask' ? 'waiting' : 'seated',
      groundRulesAccepted: false,
      row: leaving?.row ?? Object.keys(session.seats).length,
      kit: [],
      takenAt: now,
      missed: missedBy(session),
    },
  });
}

/** What the host does about a seat. Nothing here touches its notes. */
export function decideSeat(session: UnderWay, ask: SeatCommand): Decision {
  if (ask.type === 'SetDoors') {
    return session.doors === ask.doors
      ? refused('nothing-to-do')
      : happened({ type: 'DoorsSet', doors: ask.doors });
  }
  const seat = session.seats[ask.seat];
  if (seat === undefined) return refused('no-such-seat');
  switch (ask.type) {
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
    default:
      return ask satisfies never;
  }
}

/** What a guest does for the seat they hold. */
export function decideForGuest(session: UnderWay, id: SeatId, ask: GuestCommand, moment: Moment): Decision {
  const seat = session.seats[id];
  if (seat === undefined) return refused('no-such-seat');
  if (ask.type !== 'LeaveTable' && seat.presence !== 'seated') return refused('not-seated');
  switch (ask.type) {
    case 'AcceptGroundRules':
      return seat.groundRulesAccepted
        ? refused('nothing-to-do')
        : happened({ type: 'GroundRulesAccepted', seat: id });
    case 'GiveSignal':
      return giveSignal(session, id, ask, moment);
    case 'ChangeSeat':
      return changeSeat(id, ask);
    case 'CatchUp': {
      const pour = seat.missed.find((missed) => ownPourAt(session, seat, missed) === ask.pour);
      return pour === undefined
        ? refused('nothing-to-do')
        : happened({ type: 'PourCaughtUp', seat: id, pour });
    }
    case 'CheckKit':
      return seat.kit.includes(ask.item) === ask.ready
        ? refused('nothing-to-do')
        : happened({ type: 'KitChecked', seat: id, item: ask.item, ready: ask.ready });
    case 'LeaveTable':
      return seat.presence === 'left' || seat.presence === 'removed'
        ? refused('nothing-to-do')
        : happened({ type: 'SeatLeft', seat: id });
    default:
      return ask satisfies never;
  }
}

function changeSeat(seat: SeatId, ask: Extract<GuestCommand, { type: 'ChangeSeat' }>): Decision {
  const changes = {
    ...(ask.name === undefined ? {} : { name: ask.name }),
    ...(ask.leftHanded === undefined ? {} : { leftHanded: ask.leftHanded }),
    ...(ask.remote === undefined ? {} : { remote: ask.remote }),
  };
  return Object.keys(changes).length === 0
    ? refused('nothing-to-do')
    : happened({ type: 'SeatChanged', seat, ...changes });
}

/** A signal is about the cue it was given in: a late one must not make the next cue look ready. */
function giveSignal(
  session: UnderWay,
  seat: SeatId,
  ask: Extract<GuestCommand, { type: 'GiveSignal' }>,
  moment: Moment,
): Decision {
  const cue = cueNow(session).id;
  const known = ask.cue === cue || ask.cue === cueForGuests(session, cueNow(session));
  if (!known && ask.signal !== 'needs-host') return refused('moved-on');
  if (ask.signal === 'ready' && !traitsOf(cueNow(session)).asksReady) return refused('nothing-to-do');
  if ((session.signals[seat] ?? null) === ask.signal) return refused('nothing-to-do');
  const given = { type: 'SignalGiven', seat, signal: ask.signal } as const;
  const after = evolveAll(session, [given]);
  const room = after.status === 'under-way' ? weighRoom(after, cue, moment) : refused('nothing-to-do');
  return happened(given, ...(room.ok ? room.events : []));
}
