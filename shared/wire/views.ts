/**
 * What guests' devices see, as types: the guest's app may not reach into core, and nothing of core reaches a phone.
 */
export type { CommandId, CueId, PourId, SeatId, TastingId } from '../../core/ids.ts';
export type { CueKind, Pass, Sense, Step } from '../../core/running-order/cue.ts';
export type { KitItem, ReminderKind, Signal as SeatSignal } from '../../core/session/state.ts';
export type { NamedPour, PourCard } from '../../core/session/views/pour-card.ts';
export type { SeatView } from '../../core/session/views/seat.ts';
export type {
  ClockView,
  CueView,
  GlassView,
  StageFinished,
  StageUnderWay,
  StageView,
} from '../../core/session/views/stage.ts';
export type { Drink } from '../../core/tasting.ts';
