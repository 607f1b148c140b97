import type { Plan } from '../../../core/tasting.ts';
import { waterWords as said } from '../../../shared/language/en/plan-water.ts';
import { number } from '../../numbers.ts';
import { Fold } from '../fields/fold.tsx';
import { NumberField } from '../fields/number-field.tsx';
import { ReckoningSteps } from '../fields/reckoning-steps.tsx';
import { waterInPour } from '../figures/water-in-pour.ts';
import { volume } from '../volume.ts';
import type { PourFields } from './drink-facts.tsx';

/** What the drops do to a spirit, and how much water brings it down to a wished strength. */
export function WaterFold({ plan, pour, set }: PourFields & { readonly plan: Plan }) {
  const water = waterInPour(pour, plan);
  if (water === null) return null;
  const { drops, glass, dropped, reached } = water;
  const inGlass = volume(glass.volume, plan.volumeUnit);
  const effect = said.drops(drops, inGlass, number(glass.strength, 1), number(dropped.strength, 1));
  return (
    <Fold title={said.title} summary={said.sheet(drops, number(dropped.strength, 1))}>
      <p>{effect}</p>
      <ReckoningSteps of={effect} steps={dropped.reckoning} plan={plan} />
      <NumberField
        label={said.wish}
        hint={said.wishHint}
        value={pour.dilutedAbv}
        least={1}
        most={glass.strength}
        optional
        wrong={said.wishWrong(number(glass.strength, 1))}
        onNumber={(abv) => set('dilutedAbv', abv)}
      />
      {reached && (
        <>
          <p>{said.reach(volume(reached.water, plan.volumeUnit, 1), inGlass, number(reached.strength, 1))}</p>
          <ReckoningSteps of={said.wish} steps={reached.reckoning} plan={plan} />
        </>
      )}
    </Fold>
  );
}
