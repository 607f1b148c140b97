import type { Plan } from '../../core/tasting.ts';
import type { Millilitres } from '../../core/units.ts';
import { number } from '../numbers.ts';
import { volume } from '../plan/volume.ts';

/** As the plan page writes it, and in litres where a jug is meant rather than a glass. */
export const volumeText = (ml: Millilitres, unit: Plan['volumeUnit']): string =>
  unit === 'ml' && ml >= 1000 ? `${number(ml / 1000, 1)} L` : volume(ml, unit);
