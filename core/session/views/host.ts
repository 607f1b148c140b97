import type { Terms } from '../../drinks/drink-kinds.ts';
import type { CueId, PourId } from '../../ids.ts';
import type { ToldResult } from '../../panel/round-result.ts';
import { type Cue, isClosing, poursOf } from '../../running-order/cue.ts';
import { traitsOf } from '../../running-order/cue-traits.ts';
import type { Habits } from '../../running-order/forecast.ts';
import { glassNumbers } from '../../running-order/glass-numbers.ts';
import type { Lengths } from '../../running-order/repace.ts';
import type { Ending, Tempo } from '../../running-order/tempo.ts';
import { flightsOf, type Pacing, type Plan, type Trial, termsOf } from '../../tasting.ts';
import type { EpochMs } from '../../units.ts';
import { glassesToCome } from '../arrangement.ts';
import { habitsNow, tempoOf, unfittedOf } from '../fitting.ts';
import { endingNow, playable } from '../position.ts';
import { inTellingOrder, metByAll, servedInOwnOrders } from '../serving.ts';
import {
  cueNow,
  type Doors,
  type Entry,
  type Finished,
  type Reminder,
  type ScreenShows,
  type UnderWay,
} from '../state.ts';
import { type HostSeat, hostSeats } from './host-seats.ts';
import { type ClockView, clockView } from './stage.ts';

/** What the host's devices see: the room and its place in the running order, and never a word of anybody's notes [Q1]. */
export type HostView = HostUnderWay | HostFinished;

/** The same without who sits where, which grows with the room and changes on its own. */
export type RoomView = RoomUnderWay | RoomFinished;

interface Seated {
  readonly seats: readonly HostSeat[];
}
export interface HostUnderWay extends RoomUnderWay, Seated {}
export interface HostFinished extends RoomFinished, Seated {}

interface RoomBase {
  readonly version: number;
  readonly title: string;
  /** Rises when the plan has changed, so that a device fetches it again. */
  readonly planChanges: number;
  readonly blind: boolean;
  /** In whose words guests are asked about structure. */
  readonly terms: Terms;
  readonly pacing: Pacing;
  /** How many the plan reckons with, at the table and at home. */
  readonly expected: { readonly room: number; readonly home: number };
  readonly pours: readonly HostPour[];
  readonly trials: readonly HostTrial[];
  /** What the room was told it made of its glasses [R1]. */
  readonly results: readonly ToldResult[];
  /** When which cue was entered. */
  readonly timeline: readonly Entry[];
  readonly openedAt: EpochMs;
  /** What earlier evenings and this one so far taught, as the server fits by it. */
  readonly habits: Habits;
}

interface RoomUnderWay extends RoomBase {
  readonly status: 'under-way';
  readonly cue: CueId;
  /** [P18] Guests are asked whether they are ready. */
  readonly asksReady: boolean;
  /** What ends this cue; the clock and the room do so by themselves. */
  readonly endsBy: Ending;
  /** By what the end is forecast and fitted. */
  readonly tempo: Tempo;
  readonly next: CueId | null;
  readonly previous: CueId | null;
  readonly takesEffectAt: EpochMs;
  readonly clock: ClockView;
  readonly doors: Doors;
  readonly reminder: Reminder | null;
  /** Whether the running order was fitted to an end and can be put back. */
  readonly fitted: boolean;
  readonly wishedEnd: EpochMs | null;
  /** Whether what is still to come has closing passes, and whether they are left out. */
  readonly closingPass: 'none' | 'kept' | 'dropped';
  /** Whether discussions were cut to a minute. */
  readonly shortTalks: boolean;
  readonly waitForRemote: boolean;
  /** [P21] The names of this cue that are not told yet, in the order in which they will be; empty where it tells none. */
  readonly toTell: readonly PourId[];
  /** Whether the next tap tells the first of them, or all. */
  readonly naming: Plan['naming'];
  readonly justTold: readonly PourId[];
  readonly screen: ScreenShows;
}

interface RoomFinished extends RoomBase {
  readonly status: 'finished';
  readonly finishedAt: EpochMs;
}

export interface HostPour {
  readonly id: PourId;
  /** The number on mats, vials and sheets, from 1 [P23]. */
  readonly position: number;
  readonly flight: number;
  readonly name: string;
  readonly producer: string | null;
  readonly code: string | null;
  /** Everybody has had it in front of them; with own orders that takes the whole flight [F6]. */
  readonly reached: boolean;
  readonly revealed: boolean;
  readonly dropped: boolean;
  /** Still to come, and may be put in another place of the order [P24]. */
  readonly movable: boolean;
  /** `sealed` by having been opened once; `silent` until then. */
  readonly discussion: DiscussionState;
}

/** An odd-one-out, which is opened and closed like a pour. */
export interface HostTrial {
  readonly id: PourId;
  readonly a: PourId;
  readonly b: PourId;
  readonly reached: boolean;
  readonly discussion: DiscussionState;
}

export type DiscussionState = 'silent' | 'open' | 'closed';

/** The running order as the host sees it. Sent on joining and when it changes, for it is by far the largest part. */
export interface RunningOrderView {
  readonly version: number;
  /** Those still to be played or already played, in order; the dropped ones left out. */
  readonly cues: readonly Cue[];
  /** Lengths before the running order was fitted to an end, of the cues that a new fitting starts from. */
  readonly unfitted: Lengths;
}

export const hostView = (session: UnderWay | Finished, version: number): HostView => ({
  ...roomView(session, version),
  seats: [...hostSeats(session).values()],
});

export function roomView(session: UnderWay | Finished, version: number): RoomView {
  const base: RoomBase = {
    version,
    title: session.plan.title,
    planChanges: session.planChanges,
    blind: session.plan.blind,
    terms: termsOf(session.plan),
    pacing: session.pacing,
    expected: { room: session.plan.guests, home: session.plan.remoteGuests },
    pours: hostPours(session),
    trials: session.plan.trials.map((trial) => hostTrial(session, trial)),
    results: session.results,
    timeline: session.timeline,
    openedAt: session.openedAt,
    habits: habitsNow(session, session.status === 'under-way' ? tempoOf(session) : undefined),
  };
  return session.status === 'finished'
    ? { ...base, status: 'finished', finishedAt: session.finishedAt }
    : underWay(session, base);
}

export const runningOrderView = (session: UnderWay | Finished, version: number): RunningOrderView => ({
  version,
  cues: playable(session).flatMap((index) => session.cues[index] ?? []),
  unfitted: unfittedOf(session),
});

function underWay(session: UnderWay, base: RoomBase): RoomUnderWay {
  const order = playable(session);
  const after = session.cues[order.find((index) => index > session.at) ?? -1];
  const before = session.cues[order.findLast((index) => index < session.at) ?? -1];
  return {
    ...base,
    status: 'under-way',
    cue: cueNow(session).id,
    asksReady: traitsOf(cueNow(session)).asksReady,
    endsBy: endingNow(session),
    tempo: tempoOf(session),
    next: after?.id ?? null,
    previous: before?.id ?? null,
    takesEffectAt: session.enteredAt,
    clock: clockView(session),
    doors: session.doors,
    reminder: session.reminder,
    fitted: session.fitted !== null,
    wishedEnd: session.wishedEnd,
    closingPass: closingPassOf(session),
    shortTalks: session.shortTalks.length > 0,
    waitForRemote: session.waitForRemote,
    toTell: namesToTell(session),
    naming: session.plan.naming,
    justTold: session.justTold,
    screen: session.screen,
  };
}

function namesToTell(session: UnderWay): PourId[] {
  const cue = cueNow(session);
  if (cue.kind !== 'reveal') return [];
  const met = metByAll(session);
  const untold = poursOf(cue).filter(
    (pour) => met.includes(pour) && !session.dropped.includes(pour) && !session.revealed.includes(pour),
  );
  return inTellingOrder(session.plan, untold);
}

function closingPassOf(session: UnderWay): RoomUnderWay['closingPass'] {
  if (session.closingDropped) return 'dropped';
  return session.cues.slice(session.at).some(isClosing) ? 'kept' : 'none';
}

function hostPours(session: UnderWay | Finished): HostPour[] {
  const places = flightsOf(session.plan).flatMap(({ index, pours }) =>
    pours.map((pour) => ({ flight: index, pour })),
  );
  const met = metByAll(session);
  const numbers = glassNumbers(session.plan);
  const movable =
    session.status === 'under-way' && !servedInOwnOrders(session.plan) ? glassesToCome(session) : [];
  return places.map(({ flight, pour }, index) => {
    return {
      id: pour.id,
      position: numbers.get(pour.id) ?? index + 1,
      flight,
      name: pour.name,
      producer: pour.producer ?? null,
      code: session.plan.codes[pour.id] ?? null,
      reached: met.includes(pour.id),
      revealed: session.revealed.includes(pour.id),
      dropped: session.dropped.includes(pour.id),
      movable: movable.includes(pour.id),
      discussion: discussionOf(session, pour.id),
    };
  });
}

const hostTrial = (session: UnderWay | Finished, { id, a, b }: Trial): HostTrial => ({
  id,
  a,
  b,
  reached: session.reached.includes(id),
  discussion: discussionOf(session, id),
});

function discussionOf(session: UnderWay | Finished, pour: PourId): DiscussionState {
  const discussion = session.discussions[pour];
  if (discussion === undefined) return 'silent';
  return discussion.open ? 'open' : 'closed';
}
