import type { PourCard } from '../../core/session/views/pour-card.ts';
import type { SeatView } from '../../core/session/views/seat.ts';
import type { GlassView, StageView } from '../../core/session/views/stage.ts';

/** The arc as this guest has it: the common one, or with own orders the one that is theirs. */
export function glassesOf(stage: StageView, seat: SeatView | null): readonly GlassView[] {
  const served = stage.ownOrders ? seat?.served : null;
  if (!served) return stage.glasses;
  return stage.glasses.map((glass, index) => ({ ...glass, pour: served[index] ?? null }));
}

/** The pour in this guest's hand during the current cue. */
export function pourInHand(stage: StageView, seat: SeatView | null): PourCard | null {
  if (stage.status !== 'under-way' || stage.cue.position === null) return null;
  const { position } = stage.cue;
  return glassesOf(stage, seat).find((glass) => glass.position === position)?.pour ?? null;
}
