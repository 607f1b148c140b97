import type { StageUnderWay } from '../../shared/wire/views.ts';

/** Ms after which water is said, however the evening goes (common practice, no source). */
export const waterEvery = 15 * 60_000;

/**
 * Whether it is long since the room last had a rest with water [C1]. Said while there is something to taste or to talk
 * about; water and breaks say it themselves.
 * @param now epoch milliseconds on the server's clock
 */
export function waterIsDue(
  { cue, lastWaterAt }: Pick<StageUnderWay, 'cue' | 'lastWaterAt'>,
  now: number,
): boolean {
  return cue.remindsOfWater && now - (lastWaterAt ?? now) >= waterEvery;
}
