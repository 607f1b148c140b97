import { waysOf } from '../../../core/drinks/drink-ways.ts';
import { afterDrops, waterToReach } from '../../../core/planning/strength/dilution.ts';
import type { Plan, Pour } from '../../../core/tasting.ts';
import { abvPercent } from '../../../core/units.ts';
import { pourVolume } from './strength.ts';

/**
 * What water makes of a pour whose drink gets drops and whose strength is known; else null. `reached` is there where the
 * host wishes a strength that water can bring it down to.
 */
export function waterInPour(pour: Pour, plan: Plan) {
  const drops = waysOf[pour.drink].dropsOfWater;
  if (drops === 0 || pour.abv === undefined || pour.abv === 0) return null;
  const glass = { volume: pourVolume(pour, plan), strength: abvPercent(pour.abv) };
  const wish = pour.dilutedAbv;
  const reached = wish === undefined ? null : waterToReach(glass, abvPercent(wish));
  return {
    drops,
    glass,
    dropped: afterDrops(glass, drops),
    reached: wish !== undefined && reached?.kind === 'add-water' ? { ...reached, strength: wish } : null,
  };
}
