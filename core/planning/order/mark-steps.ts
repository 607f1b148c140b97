/**
 * What a host's mark from 0 to 10 means, so that two hosts mean the same by it.
 *
 * How powerful: the seven categories of odour intensity of VDI 3882 part 1, from not perceptible (0) to extremely strong
 * (6), as quoted by laboratories. How dry: the terms of EU labels for still wine, by sugar above 45, to 45, to 12 and to
 * 4 g/L (Delegated Regulation (EU) 2019/33, annex III, from memory), spread over the scale by us.
 */
export const powerSteps = 7;
export type DrynessTerm = 'sweet' | 'medium' | 'medium-dry' | 'dry';

/** The category of a mark from 0 to 10, from 0. */
export const powerStep = (mark: number): number => Math.round((mark / 10) * (powerSteps - 1));

export function drynessTerm(mark: number): DrynessTerm {
  if (mark >= 8) return 'dry';
  if (mark >= 5) return 'medium-dry';
  return mark > 2 ? 'medium' : 'sweet';
}
