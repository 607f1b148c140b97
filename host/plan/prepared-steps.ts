import type { TastingId } from '../../core/ids.ts';
import { keepJson, keptJson } from '../../shared/page/device-storage.ts';

/** What is done before an evening, in order of time. */
export const preparationSteps = ['survey', 'invitation', 'ahead', 'paper', 'pouring'] as const;
export type PreparationStep = (typeof preparationSteps)[number];

const place = (tasting: TastingId): string => `quietpour.prepared.${tasting}`;

/** Those that the host has ticked on this device. */
export function preparedSteps(tasting: TastingId): ReadonlySet<PreparationStep> {
  const kept = keptJson(place(tasting));
  return new Set(preparationSteps.filter((step) => Array.isArray(kept) && kept.includes(step)));
}

export const keepPrepared = (tasting: TastingId, steps: ReadonlySet<PreparationStep>): boolean =>
  keepJson(place(tasting), [...steps]);
