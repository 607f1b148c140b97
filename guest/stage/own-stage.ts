import { glassesOf, placeInHand } from '../../shared/follower/glass-in-hand.ts';
import type { SeatView, StageView } from '../../shared/wire/views.ts';

/** The stage as it stands in front of this guest: with own orders, with their own glasses in it [F6]. */
export function ownStage<Stage extends StageView>(stage: Stage, own: SeatView | null): Stage {
  if (!stage.ownOrders) return stage;
  const glasses = glassesOf(stage, own);
  if (stage.status !== 'under-way') return { ...stage, glasses };
  const hand = glasses[placeInHand(stage)];
  if (hand === undefined) return { ...stage, glasses };
  const pours = hand.pour === null ? [] : [hand.pour.id];
  return { ...stage, glasses, cue: { ...stage.cue, position: hand.position, pours } };
}
