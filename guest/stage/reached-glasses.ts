import type { GuestWords } from '../../shared/language/en/guest.ts';
import type { GlassView, PourCard, PourId, StageView } from '../../shared/wire/views.ts';

/** A glass that the room has come to. */
export interface ReachedGlass {
  readonly position: number;
  readonly card: PourCard;
}

export const reachedGlasses = ({ glasses }: Pick<StageView, 'glasses'>): ReachedGlass[] =>
  glasses.flatMap(({ position, pour }) => (pour === null ? [] : [{ position, card: pour }]));

export const glassOf = (stage: Pick<StageView, 'glasses'>, pour: PourId): ReachedGlass | undefined =>
  reachedGlasses(stage).find((glass) => glass.card.id === pour);

/** The highest number that stands on a mat; a dropped glass leaves a gap below it. */
export const lastGlass = ({ glasses }: Pick<StageView, 'glasses'>): number => glasses.at(-1)?.position ?? 0;

/** The glass in everybody's hand; null while none is. */
export function glassInHand(stage: StageView): ReachedGlass | null {
  if (stage.status !== 'under-way' || stage.cue.kind !== 'step') return null;
  const pour = stage.cue.pours[0];
  return pour === undefined ? null : (glassOf(stage, pour) ?? null);
}

/** What a card may be called: its name, or its code, or nothing but its place. */
export function cardName(words: GuestWords, card: PourCard): string | null {
  if (card.kind === 'named') return card.name;
  return card.code === null ? null : words.glass.coded(card.code);
}

export type ArcState = 'waiting' | 'current' | 'done';

/** How the arc stands: the glass in hand raised, reached ones left behind, the others waiting. */
export function arcOf(stage: StageView): ArcState[] {
  const hand = glassInHand(stage)?.position;
  return stage.glasses.map(({ position, reached }: GlassView) =>
    position === hand ? 'current' : reached ? 'done' : 'waiting',
  );
}
