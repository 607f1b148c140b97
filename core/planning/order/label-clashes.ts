import type { Pour } from '../../tasting.ts';

/** Figures of one label that cannot all be right. Hints for a second look, never a refusal. */
export type LabelClash = 'vintage-in-the-future' | 'older-than-its-vintage' | 'pour-larger-than-bottle';

/**
 * What a second look at the label would settle. A drink made late in one year and bottled early in another may bear
 * an age of one year more than the calendar years between.
 * @param year the calendar year now
 */
export function labelClashesOf(
  { vintage, ageYears, bottleMl, pourMl }: Pour,
  year: number,
): readonly LabelClash[] {
  const clashes: LabelClash[] = [];
  if (vintage !== undefined && vintage > year) clashes.push('vintage-in-the-future');
  if (vintage !== undefined && ageYears !== undefined && vintage <= year && ageYears > year - vintage + 1) {
    clashes.push('older-than-its-vintage');
  }
  if (bottleMl !== undefined && pourMl !== undefined && pourMl > bottleMl) {
    clashes.push('pour-larger-than-bottle');
  }
  return clashes;
}
