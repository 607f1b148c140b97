import type { SeatView } from '../../core/session/views/seat.ts';
import type { StageUnderWay } from '../../core/session/views/stage.ts';

/**
 * What guests' devices see, as types: the guest's app may not reach into core, and nothing of core reaches a phone.
 */
export type { Allergen } from '../../core/drinks/allergens.ts';
export type { PourId, TastingId } from '../../core/ids.ts';
export type { ToldResult } from '../../core/panel/round-result.ts';
export type { CueKind, Sense, Step } from '../../core/running-order/cue.ts';
export type { ToldAllergens } from '../../core/running-order/told-allergens.ts';
export type { KitItem, ScreenShows, Signal as SeatSignal } from '../../core/session/state.ts';
export type { NamedPour, PourCard } from '../../core/session/views/pour-card.ts';
export type { SeatView } from '../../core/session/views/seat.ts';
export type {
  CueView,
  GlassView,
  StageUnderWay,
  StageView,
} from '../../core/session/views/stage.ts';
export type { Drink } from '../../core/tasting.ts';

/** The stage, and what one seat alone is shown. */
export interface SeatedViews {
  readonly stage: StageUnderWay;
  readonly own: SeatView;
}
