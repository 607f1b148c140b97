import type { Terms } from '../../drinks/drink-kinds.ts';
import type { CueId, PourId } from '../../ids.ts';
import type { GuessTruth } from '../../panel/guess/guess.ts';
import type { ToldResult } from '../../panel/round-result.ts';
import {
  type Cue,
  type CueKind,
  type Pass,
  pourOf,
  poursOf,
  type Sense,
  type Step,
} from '../../running-order/cue.ts';
import { type ShownTraits, shownTraits, traitsOf } from '../../running-order/cue-traits.ts';
import { type ToldAllergens, toldAllergens } from '../../running-order/told-allergens.ts';
import { type Drink, type Pacing, termsOf } from '../../tasting.ts';
import type { DurationMs, EpochMs } from '../../units.ts';
import { toldTruths } from '../guesses.ts';
import { playable } from '../position.ts';
import { cueForGuests, inTellingOrder, placesOf, positionNow, servedInOwnOrders } from '../serving.ts';
import { cueNow, type Evening, type Finished, type Reminder, type UnderWay } from '../state.ts';
import { cardOf, type PourCard } from './pour-card.ts';

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
  /** Each seat meets the glasses of a flight in an order of its own: its pours are in its seat view. */
  readonly ownOrders: boolean;
  /** Guests are asked how much they like each pour. */
  readonly liking: boolean;
  /** In whose words guests are asked about structure. */
  readonly terms: Terms;
  /** Some wine of the evening has bubbles; which one, nobody is told. */
  readonly sparkles: boolean;
  /** The host's own additions to the word boards of this evening. */
  readonly extraWords: readonly string[];
  /** The arc, as glasses stand on the mat, dropped pours left out. */
  readonly glasses: readonly GlassView[];
  /**
   * With own orders no pour has a place in the arc that all share: these are the cards of those that are talked about,
   * told of in a result or named, by their codes. Empty in a common order.
   */
  readonly cards: readonly PourCard[];
  /** Pours and odd-one-outs whose board is open. */
  readonly openBoards: readonly PourId[];
  /** What the room was told it made of its glasses [R1]. */
  readonly results: readonly ToldResult[];
  /** Pours whose notes are sealed: what is written now is marked as added later. */
  readonly sealed: readonly PourId[];
  /** The names that were told last: one, or those that one tap told. */
  readonly justTold: readonly PourId[];
  /** What named pours are, in the terms of guesses; empty where nothing is guessed, and until a name is told [Q4, Q12]. */
  readonly truths: readonly GuessedPour[];
}

interface GuessedPour {
  readonly pour: PourId;
  readonly truth: GuessTruth;
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
  readonly pacedBy: Pacing['by'];
  /** When the room last had a rest with water; before the first, when it took up its first glass. */
  readonly lastWaterAt: EpochMs | null;
  readonly reminder: Reminder | null;
}

interface StageFinished extends StageBase {
  readonly status: 'finished';
  readonly finishedAt: EpochMs;
}

export interface CueView extends ShownTraits {
  readonly id: CueId;
  readonly kind: CueKind;
  readonly pass: Pass | null;
  readonly step: Step | null;
  readonly sense: Sense | null;
  /** The place in the arc of the glass in hand. */
  readonly position: number | null;
  /** The pour in hand, or those that are talked about; only ones that have been reached. Empty with own orders. */
  readonly pours: readonly PourId[];
  /** Of blind pours that it is about the names are known to all: what is said and asked then is another thing [R3]. */
  readonly named: boolean;
  /** [C6] What the host noted for whom it harms; null outside a glass, and where nothing is noted. */
  readonly allergens: ToldAllergens | null;
  readonly say: string | null;
  readonly gate: boolean;
}

export type ClockView =
  | { readonly kind: 'running'; readonly startsAt: EpochMs; readonly endsAt: EpochMs }
  | { readonly kind: 'held'; readonly startsAt: EpochMs; readonly remaining: DurationMs };

export interface GlassView {
  /** The number on the mat, from 1; a dropped pour leaves a gap [P23]. With own orders the place in the order of tasting. */
  readonly position: number;
  /** From 0. */
  readonly flight: number;
  /** Whether it has been in front of the room. */
  readonly reached: boolean;
  /** Absent until the room has reached it [F1], and with own orders. */
  readonly pour: PourCard | null;
}

export function stageView(session: UnderWay | Finished, version: number): StageView {
  const pages = [...session.plan.pours, ...session.plan.trials].map((each) => each.id);
  const base: StageBase = {
    version,
    title: session.plan.title,
    drink: session.plan.drink,
    blind: session.plan.blind,
    callLink: session.plan.callLink ?? null,
    ownOrders: servedInOwnOrders(session.plan),
    liking: session.plan.liking,
    terms: termsOf(session.plan),
    sparkles: session.plan.pours.some(({ sparkling }) => sparkling === true),
    extraWords: session.plan.extraWords,
    glasses: commonGlasses(session),
    cards: placelessCards(session),
    results: session.results,
    openBoards: inTellingOrder(
      session.plan,
      pages.filter((pour) => session.discussions[pour]?.open === true),
    ),
    sealed: inTellingOrder(
      session.plan,
      pages.filter((pour) => session.discussions[pour] !== undefined),
    ),
    justTold: inTellingOrder(session.plan, session.justTold),
    truths: toldTruths(session),
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
    cue: cueView(session),
    next: next === undefined ? null : { kind: next.kind, step: 'step' in next ? next.step : null },
    takesEffectAt: session.enteredAt,
    clock: clockView(session),
    progress: { cue: order.filter((index) => index <= session.at).length, of: order.length },
    pacedBy: session.pacing.by,
    lastWaterAt: lastWater(session),
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

function cueView(session: UnderWay): CueView {
  const cue = cueNow(session);
  const hidden = pourOf(cue) !== undefined && servedInOwnOrders(session.plan);
  return {
    id: cueForGuests(session, cue),
    kind: cue.kind,
    pass: cue.kind === 'step' ? cue.pass : null,
    step: 'step' in cue ? cue.step : null,
    sense: cue.kind === 'step' ? (cue.sense ?? null) : null,
    position: positionNow(session) ?? null,
    pours: hidden
      ? []
      : inTellingOrder(
          session.plan,
          poursOf(cue).filter((pour) => !session.dropped.includes(pour)),
        ),
    named: isNamed(session, cue),
    allergens: allergensAt(session, cue),
    say: cue.say ?? null,
    gate: cue.gate,
    ...shownTraits(cue),
  };
}

/** With own orders every seat has another pour in hand, so that the flight is told. */
function allergensAt({ plan, revealed, dropped }: Evening, cue: Cue): ToldAllergens | null {
  const [id] = cue.kind === 'step' || cue.kind === 'odd-one-out' ? poursOf(cue) : [];
  if (id === undefined) return null;
  const named = !servedInOwnOrders(plan) && (!plan.blind || revealed.includes(id));
  return toldAllergens(plan, id, named, dropped);
}

function isNamed({ plan, dropped, revealed }: Evening, cue: Cue): boolean {
  const pours = poursOf(cue).filter((pour) => !dropped.includes(pour));
  return plan.blind && pours.length > 0 && pours.every((pour) => revealed.includes(pour));
}

function lastWater({ cues, timeline }: UnderWay): EpochMs | null {
  const entered = (holds: (cue: Cue) => boolean) => {
    const ids = new Set(cues.filter(holds).map(({ id }) => id));
    return timeline.filter((entry) => ids.has(entry.cue)).map(({ at }) => at);
  };
  return (
    entered((cue) => traitsOf(cue).givesWater).at(-1) ?? entered(({ kind }) => kind === 'step')[0] ?? null
  );
}

function commonGlasses(session: Evening): GlassView[] {
  const hidden = servedInOwnOrders(session.plan);
  const laid = placesOf(session).toSorted((one, other) => one.position - other.position);
  return laid.map(({ position, flight, named }) => {
    const reached = session.reached.includes(named);
    return { position, flight, reached, pour: reached && !hidden ? cardOf(session, named) : null };
  });
}

function placelessCards(session: Evening): PourCard[] {
  if (!servedInOwnOrders(session.plan)) return [];
  const { discussions, revealed, results } = session;
  const inResults = results.flatMap(({ parts }) =>
    parts.flatMap(({ pours }) => pours.map(({ pour }) => pour)),
  );
  const told = session.plan.pours
    .map(({ id }) => id)
    .filter((id) => discussions[id]?.open === true || revealed.includes(id) || inResults.includes(id));
  return inTellingOrder(session.plan, told).flatMap((id) => cardOf(session, id) ?? []);
}
