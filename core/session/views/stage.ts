import type { CueId, PourId } from '../../ids.ts';
import type { Cue, CueKind, Pass, Sense, Step } from '../../running-order/cue.ts';
import { type Drink, flightsOf } from '../../tasting.ts';
import type { DurationMs, EpochMs } from '../../units.ts';
import { playable } from '../position.ts';
import { cueNow, type Evening, type Finished, type Reminder, type UnderWay } from '../state.ts';
import { type PourCard, pourCard } from './pour-card.ts';

/**
 * What every follower may see, the same for all: serialised once per change and broadcast. Built field by field;
 * a pour that has not been reached is a bare place in the arc, and nothing in here comes from anybody's notes.
 */
export type StageView = StageUnderWay | StageFinished;

interface StageBase {
  /** Number of events behind this view; a follower never goes back [F2]. */
  readonly version: number;
  readonly title: string;
  readonly drink: Drink;
  readonly blind: boolean;
  readonly callLink: string | null;
  /** The arc, in order of tasting, dropped pours left out. */
  readonly glasses: readonly GlassView[];
  /** Pours whose board is open. */
  readonly openBoards: readonly PourId[];
  /** Pours whose notes are sealed: what is written now is marked as added later. */
  readonly sealed: readonly PourId[];
}

export interface StageUnderWay extends StageBase {
  readonly status: 'under-way';
  readonly cue: CueView;
  /** The kind of what comes after, never which pour. */
  readonly next: { readonly kind: CueKind; readonly step: Step | null } | null;
  readonly takesEffectAt: EpochMs;
  readonly clock: ClockView;
  /** From 1, of those that are still to be played. */
  readonly progress: { readonly cue: number; readonly of: number };
  readonly pacedBy: 'host' | 'clock' | 'room';
  readonly reminder: Reminder | null;
}

export interface StageFinished extends StageBase {
  readonly status: 'finished';
  readonly finishedAt: EpochMs;
}

export interface CueView {
  readonly id: CueId;
  readonly kind: CueKind;
  readonly pass: Pass | null;
  readonly step: Step | null;
  readonly sense: Sense | null;
  /** The pour in hand, or those that are talked about; only ones that have been reached. */
  readonly pours: readonly PourId[];
  readonly say: string | null;
  readonly gate: boolean;
}

export type ClockView =
  | { readonly kind: 'running'; readonly startsAt: EpochMs; readonly endsAt: EpochMs }
  | { readonly kind: 'held'; readonly startsAt: EpochMs; readonly remaining: DurationMs };

export interface GlassView {
  /** From 1, in order of tasting. */
  readonly position: number;
  /** From 0. */
  readonly flight: number;
  /** Absent until the room has reached it [F1]. */
  readonly pour: PourCard | null;
}

export function stageView(session: UnderWay | Finished, version: number): StageView {
  const pours = session.plan.pours.map((pour) => pour.id);
  const base: StageBase = {
    version,
    title: session.plan.title,
    drink: session.plan.drink,
    blind: session.plan.blind,
    callLink: session.plan.callLink ?? null,
    glasses: glassesOf(session),
    openBoards: pours.filter((pour) => session.discussions[pour]?.open === true),
    sealed: pours.filter((pour) => session.discussions[pour] !== undefined),
  };
  return session.status === 'finished'
    ? { ...base, status: 'finished', finishedAt: session.finishedAt }
    : underWay(session, base);
}

function underWay(session: UnderWay, base: StageBase): StageUnderWay {
  const order = playable(session);
  const next = session.cues[order.find((index) => index > session.at) ?? -1];
  return {
    ...base,
    status: 'under-way',
    cue: cueView(cueNow(session), session),
    next: next === undefined ? null : { kind: next.kind, step: 'step' in next ? next.step : null },
    takesEffectAt: session.enteredAt,
    clock: clockView(session),
    progress: { cue: order.filter((index) => index <= session.at).length, of: order.length },
    pacedBy: session.pacing.by,
    reminder: session.reminder,
  };
}

export function clockView({ clock, enteredAt }: UnderWay): ClockView {
  switch (clock.kind) {
    case 'running':
      return { kind: 'running', startsAt: enteredAt, endsAt: clock.endsAt };
    case 'held':
      return { kind: 'held', startsAt: enteredAt, remaining: clock.remaining };
    default:
      return clock satisfies never;
  }
}

function cueView(cue: Cue, session: Evening): CueView {
  const reached = (pours: readonly PourId[]) =>
    pours.filter((pour) => session.reached.includes(pour) && !session.dropped.includes(pour));
  return {
    id: cue.id,
    kind: cue.kind,
    pass: cue.kind === 'step' ? cue.pass : null,
    step: 'step' in cue ? cue.step : null,
    sense: cue.kind === 'step' ? (cue.sense ?? null) : null,
    pours: reached(cue.kind === 'step' ? [cue.pour] : 'pours' in cue ? cue.pours : []),
    say: cue.say ?? null,
    gate: cue.gate,
  };
}

function glassesOf(session: Evening): GlassView[] {
  const places = flightsOf(session.plan).flatMap((flight) =>
    flight.pours.map((pour) => ({ flight: flight.index, pour })),
  );
  return places
    .filter(({ pour }) => !session.dropped.includes(pour.id))
    .map(({ flight, pour }, index) => ({
      position: index + 1,
      flight,
      pour: session.reached.includes(pour.id) ? pourCard(session, pour) : null,
    }));
}
