import type { SeatView } from '../../core/session/views/seat.ts';
import type { GlassView, StageView } from '../../core/session/views/stage.ts';

/** The arc as this guest has it: the common one, or with own orders the one that is theirs. */
export function glassesOf(stage: StageView, seat: SeatView | null): readonly GlassView[] {
  const served = stage.ownOrders ? seat?.served : null;
  if (!served) return stage.glasses;
  return stage.glasses.map((glass, index) => ({
    ...glass,
    position: seat?.servedAt?.[index] ?? glass.position,
    pour: served[index] ?? null,
  }));
}

/** Which of the glasses, from 0, is in hand: with own orders its number differs from seat to seat. */
export const placeInHand = ({ glasses, cue }: Extract<StageView, { status: 'under-way' }>): number =>
  glasses.findIndex(({ position }) => position === cue.position);
