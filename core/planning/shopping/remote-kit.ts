import { type Millilitres, millilitres } from '../../units.ts';
import { requireBetween, requireHeadCount } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';

/** Sizes in which small glass vials are sold. Common practice, no source. */
const USUAL_VIALS: readonly Millilitres[] = [5, 10, 15, 20, 30, 50, 60, 100].map(millilitres);

/** Room that stays free above the drink, as a share of the pour: spirit swells when it warms on its way. */
const HEADSPACE = 0.05;

export type KitVial =
  | { readonly kind: 'vial'; readonly pour: Millilitres; readonly size: Millilitres; readonly count: number }
  | { readonly kind: 'no-vial-large-enough'; readonly pour: Millilitres };

export interface RemoteKit {
  /** One entry for each pour, in the order given. */
  readonly vials: readonly KitVial[];
  /** Vials to fill, which is also the number of labels to print. */
  readonly total: number;
  readonly reckoning: Reckoning;
}

/**
 * Vials for guests at home: for each pour the smallest size that holds it with headspace, one for each guest.
 * @throws FigureOutOfRange for a head count that is not a whole number from 0 to 10,000, or for a pour or vial
 * outside 0.01..100,000 mL.
 */
export function remoteKit(
  guests: number,
  pours: readonly Millilitres[],
  sizes: readonly Millilitres[] = USUAL_VIALS,
): RemoteKit {
  requireHeadCount('guests', guests);
  for (const size of sizes) requireBetween('vial', size, 0.01, 100_000);
  const ascending = [...sizes].sort((one, other) => one - other);
  const vials = pours.map((pour): KitVial => {
    requireBetween('pour', pour, 0.01, 100_000);
    const size = ascending.find((each) => each * (1 + 1e-9) >= pour * (1 + HEADSPACE));
    return size === undefined
      ? { kind: 'no-vial-large-enough', pour }
      : { kind: 'vial', pour, size, count: guests };
  });
  const found = vials.filter((vial) => vial.kind === 'vial');
  const total = found.reduce((sum, vial) => sum + vial.count, 0);
  return {
    vials,
    total,
    reckoning: [
      ...found.map((vial) =>
        step(
          'vial-size',
          { pour: figure(vial.pour, 'mL'), headspace: figure(HEADSPACE, '1') },
          figure(vial.size, 'mL'),
          'common-practice',
        ),
      ),
      step(
        'vials-needed',
        { guests: figure(guests, 'guests'), pours: figure(found.length, 'pours') },
        figure(total, 'vials'),
        'definition',
      ),
    ],
  };
}
