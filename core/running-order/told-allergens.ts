import { type Allergen, allergens } from '../drinks/allergens.ts';
import type { PourId } from '../ids.ts';
import { flightsOf, type Plan } from '../tasting.ts';

/** What guests are told before they sip. Never that something is absent: nobody but the producer can say that. */
export interface ToldAllergens {
  /** Of this pour, or of its flight, where the pour alone would be told apart by them. */
  readonly of: 'pour' | 'flight';
  /** In the order of the law. */
  readonly noted: readonly Allergen[];
}

type Told = Pick<Plan, 'pours' | 'flightSizes' | 'trials' | 'blind'>;

/**
 * [C6] What the host has noted of a pour that may be named, else of all pours of its flight, the dropped ones left out: a
 * guest must know before the first sip, and the flight betrays no glass. Null where nothing was noted.
 * @param id of a pour or of an odd-one-out
 * @param named whether everybody may know the name of this pour
 */
export function toldAllergens(
  plan: Told,
  id: PourId,
  named: boolean,
  dropped: readonly PourId[] = [],
): ToldAllergens | null {
  const trial = plan.trials.find((each) => each.id === id);
  const flight = flightsOf(plan).find(({ index, pours }) =>
    trial === undefined ? pours.some((pour) => pour.id === id) : index === trial.flight,
  );
  const apart = named && trial === undefined;
  // An odd-one-out may be of two drinks of other flights.
  const pours = apart
    ? plan.pours.filter((pour) => pour.id === id)
    : [
        ...(flight?.pours.filter((pour) => pour.id === id || !dropped.includes(pour.id)) ?? []),
        ...plan.pours.filter((pour) => pour.id === trial?.a || pour.id === trial?.b),
      ];
  const noted = allergens.filter((allergen) => pours.some((pour) => pour.allergens?.includes(allergen)));
  return noted.length === 0 ? null : { of: apart ? 'pour' : 'flight', noted };
}
