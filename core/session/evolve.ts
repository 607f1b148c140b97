import type { PourId, SeatId } from '../ids.ts';
import { type Cue, poursOf } from '../running-order/cue.ts';
import { durationMs, type EpochMs, later, toMs } from '../units.ts';
import type { SessionEvent } from './event.ts';
import { closing, opening } from './evolve/discussions.ts';
import { arranged, bottleChanged, pourAdded, withPlan } from './evolve/glasses.ts';
import {
  cueEdited,
  discussionsRestored,
  discussionsShortened,
  fitUndone,
  withLengths,
} from './evolve/lengths.ts';
import { type OwnRecords, withEntry, withoutEntry } from './evolve/own-record.ts';
import { indexOfCue } from './position.ts';
import {
  cueNow,
  type Finished,
  type ScreenShows,
  type Seat,
  type Session,
  type Signal,
  type UnderWay,
} from './state.ts';

/** What is true after these events, oldest first. Never refuses: what stands in the log has happened. What it is given stays as it is. */
export function evolveAll(session: Session, events: readonly SessionEvent[]): Session {
  const own: OwnRecords = new WeakSet();
  return events.reduce((now, event) => evolveWith(now, event, own), session);
}

function evolveWith(session: Session, event: SessionEvent, own: OwnRecords): Session {
  if (session.status === 'unopened') return event.type === 'DoorsOpened' ? opened(event) : session;
  if (session.status === 'finished')
    return event.type === 'TastingReopened' ? reopened(session, event.at) : session;
  return evolveUnderWay(session, event, own);
}

function opened({ plan, cues, habits, guess, at }: Extract<SessionEvent, { type: 'DoorsOpened' }>): UnderWay {
  const bare: UnderWay = {
    status: 'under-way',
    plan,
    planChanges: 0,
    cues,
    at: 0,
    enteredAt: at,
    clock: { kind: 'running', endsAt: at },
    signals: {},
    reminder: null,
    doors: 'open',
    seats: {},
    pacing: plan.pacing,
    discussions: {},
    revealed: [],
    results: [],
    dropped: [],
    reached: [],
    timeline: [],
    openedAt: at,
    breaksCalled: 0,
    habits,
    fitted: null,
    shortTalks: [],
    closingDropped: false,
    wishedEnd: null,
    waitForRemote: false,
    justTold: [],
    screen: theRoom,
    guess,
    guessesTold: [],
  };
  return entered(bare, 0, at);
}

function evolveUnderWay(session: UnderWay, event: SessionEvent, own: OwnRecords): Session {
  switch (event.type) {
    case 'DoorsOpened':
    case 'TastingReopened':
      return session;
    case 'CueEntered':
      return entered(
        event.takesBack === true ? jumpTakenBack(session) : session,
        indexOfCue(session.cues, event.cue),
        event.at,
        event.by,
      );
    case 'ClockHeld':
      return { ...session, clock: { kind: 'held', remaining: event.remaining, since: event.at } };
    case 'ClockResumed':
      return { ...session, clock: { kind: 'running', endsAt: event.endsAt } };
    case 'TimeGiven':
      return timeGiven(session, event.by);
    case 'BreakCalled':
      return breakCalled(session, event.cue, event.before);
    case 'ReminderGiven':
      return { ...session, reminder: { kind: event.kind, at: event.at } };
    case 'ReminderCleared':
      return { ...session, reminder: null };
    case 'DiscussionOpened':
      return { ...session, discussions: opening(session, event.pours, event.at) };
    case 'DiscussionClosed':
      return { ...session, discussions: { ...session.discussions, ...closing(session, event.pours) } };
    case 'PoursRevealed':
      return {
        ...session,
        revealed: [...session.revealed, ...event.pours],
        justTold: event.pours,
        screen: unlessDark(session.screen),
      };
    case 'ScreenSteered':
      return { ...session, screen: event.shows };
    case 'ResultTold':
      return { ...session, results: [...session.results, event.result] };
    case 'GuessesTold':
      return { ...session, guessesTold: [...session.guessesTold, ...event.told] };
    case 'PourDropped':
      return { ...session, dropped: [...session.dropped, event.pour] };
    case 'PourRestored':
      return { ...session, dropped: session.dropped.filter((pour) => pour !== event.pour) };
    case 'BottleChanged':
      return bottleChanged(session, event);
    case 'TitleMended':
      return withPlan(session, { title: event.title });
    case 'PourAdded':
      return pourAdded(session, event);
    case 'GlassesReordered':
      return arranged(session, event.arranged);
    case 'PacingChosen':
      return { ...session, pacing: event.pacing };
    case 'CueEdited':
      return cueEdited(session, event);
    case 'RunningOrderFitted':
      return {
        ...withLengths(session, event.lengths),
        fitted: event.was.length === 0 ? null : event.was,
        wishedEnd: event.endsAt ?? session.wishedEnd,
      };
    case 'FitUndone':
      return fitUndone(session);
    case 'EndWished':
      return { ...session, wishedEnd: event.endsAt };
    case 'ClosingPassDropped':
    case 'ClosingPassRestored':
      return { ...session, closingDropped: event.type === 'ClosingPassDropped' };
    case 'DiscussionsShortened':
      return discussionsShortened(session, event);
    case 'DiscussionsRestored':
      return discussionsRestored(session);
    case 'RemoteAwaited':
      return { ...session, waitForRemote: event.wait };
    case 'DoorsSet':
      return { ...session, doors: event.doors };
    case 'SeatTaken':
      return { ...session, seats: withEntry(session.seats, event.seat.id, event.seat, own) };
    case 'SeatChanged': {
      const { type: _, seat, ...changes } = event;
      return withSeat(session, seat, changes, own);
    }
    case 'SeatAdmitted':
    case 'SeatRestored':
      return withSeat(session, event.seat, { presence: 'seated' }, own);
    case 'SeatLeft':
      return withoutSignal(withSeat(session, event.seat, { presence: 'left' }, own), event.seat, own);
    case 'SeatRemoved':
      return withoutSignal(withSeat(session, event.seat, { presence: 'removed' }, own), event.seat, own);
    case 'SeatGaveWay': {
      const { [event.seat]: _, ...seats } = session.seats;
      return withoutSignal({ ...session, seats }, event.seat, own);
    }
    case 'CautionsRead':
      return withSeat(session, event.seat, { cautionsRead: true }, own);
    case 'PouringStopped':
    case 'PouringResumed':
      return withSeat(session, event.seat, { onlyWater: event.type === 'PouringStopped' }, own);
    case 'GroundRulesAccepted':
      return withSeat(session, event.seat, { groundRulesAccepted: true }, own);
    case 'SignalGiven':
      return event.signal === null
        ? withoutSignal(session, event.seat, own)
        : { ...session, signals: withEntry(session.signals, event.seat, event.signal, own) };
    case 'PourCaughtUp': {
      const missed = session.seats[event.seat]?.missed.filter((pour) => pour !== event.pour);
      return missed === undefined ? session : withSeat(session, event.seat, { missed }, own);
    }
    case 'KitChecked': {
      const others = session.seats[event.seat]?.kit.filter((item) => item !== event.item) ?? [];
      return withSeat(session, event.seat, { kit: event.ready ? [...others, event.item] : others }, own);
    }
    case 'TastingFinished':
      return finished(session, event.at);
    default:
      return event satisfies never;
  }
}

/** The room is at `index` from `at` on: a fresh clock, no signals but calls for the host, no reminder of before. */
function entered(
  session: UnderWay,
  index: number,
  at: EpochMs,
  by: 'host' | 'clock' | 'room' = 'host',
): UnderWay {
  const cue = session.cues[index];
  if (cue === undefined) return session;
  const inFront = poursOf(cue).filter((pour) => !session.dropped.includes(pour));
  const calls = Object.entries(session.signals).filter(([, signal]) => signal === 'needs-host');
  return {
    ...session,
    at: index,
    enteredAt: at,
    clock: { kind: 'running', endsAt: later(at, toMs(cue.ideal)) },
    signals: Object.fromEntries(calls) as Record<SeatId, Signal>,
    reminder: null,
    screen: unlessDark(session.screen),
    // A host who jumps straight to the talk has had the glasses tasted some other way.
    reached: [...session.reached, ...inFront.filter((pour) => !session.reached.includes(pour))],
    timeline: [...session.timeline, { cue: cue.id, at, planned: cue.ideal, by }],
  };
}

/**
 * [P20] Glasses that only the cue entered last has brought in front of the room were not, but for those that the room has
 * since talked about or knows by name.
 */
function jumpTakenBack(session: UnderWay): UnderWay {
  const before = session.timeline.slice(0, -1).flatMap(({ cue }) => {
    const passed = session.cues[indexOfCue(session.cues, cue)];
    return passed === undefined ? [] : poursOf(passed);
  });
  const stays = (pour: PourId): boolean =>
    before.includes(pour) || session.discussions[pour] !== undefined || session.revealed.includes(pour);
  const undone = poursOf(cueNow(session)).filter((pour) => !stays(pour));
  return { ...session, reached: session.reached.filter((pour) => !undone.includes(pour)) };
}

const theRoom: ScreenShows = { is: 'room' };

/** [F8] A page that was chosen belongs to its moment; the dark is kept until the host ends it. */
const unlessDark = (screen: ScreenShows): ScreenShows => (screen.is === 'dark' ? screen : theRoom);

function timeGiven(session: UnderWay, by: number): UnderWay {
  const { clock } = session;
  return clock.kind === 'held'
    ? { ...session, clock: { ...clock, remaining: durationMs(clock.remaining + by) } }
    : { ...session, clock: { kind: 'running', endsAt: later(clock.endsAt, durationMs(by)) } };
}

function breakCalled(session: UnderWay, cue: Cue, before: string): UnderWay {
  const index = session.cues.findIndex((each) => each.id === before);
  const cues = [...session.cues.slice(0, index), cue, ...session.cues.slice(index)];
  // The pointer stays with the interrupted cue until the break is entered.
  return { ...session, cues, at: session.at + 1, breaksCalled: session.breaksCalled + 1 };
}

function withSeat(session: UnderWay, id: SeatId, changes: Partial<Seat>, own: OwnRecords): UnderWay {
  const seat = session.seats[id];
  return seat === undefined
    ? session
    : { ...session, seats: withEntry(session.seats, id, { ...seat, ...changes }, own) };
}

const withoutSignal = (session: UnderWay, seat: SeatId, own: OwnRecords): UnderWay => ({
  ...session,
  signals: withoutEntry(session.signals, seat, own),
});

/** At the end every glass that was in front of the room has its name, for the keepsake. */
function finished(session: UnderWay, finishedAt: EpochMs): Finished {
  const { at: stoodAt, enteredAt, clock, signals, reminder, doors, ...evening } = session;
  const named = evening.reached.filter((pour) => !evening.revealed.includes(pour));
  return {
    ...evening,
    status: 'finished',
    revealed: [...evening.revealed, ...named],
    // Nobody can steer it any more, and the goodbye is for everybody.
    screen: theRoom,
    finishedAt,
    stoodAt,
  };
}

/** A host who ended the evening by mistake stands where they stood, with the cue's whole time again. */
function reopened({ stoodAt, finishedAt, ...evening }: Finished, at: EpochMs): UnderWay {
  const bare: UnderWay = {
    ...evening,
    status: 'under-way',
    at: stoodAt,
    enteredAt: at,
    clock: { kind: 'running', endsAt: at },
    signals: {},
    reminder: null,
    doors: 'open',
  };
  return entered(bare, stoodAt, at);
}
