import { type GlassSet, glassesAt, placesDiffer } from '../../core/planning/serving/pouring-order.ts';
import {
  type Hand,
  layOutMat,
  type MatLayout,
  type MatSheet,
  type MatTooSmall,
} from '../../core/planning/table/mat-layout.ts';
import { glassNumbers } from '../../core/running-order/glass-numbers.ts';
import type { Plan, Pour } from '../../core/tasting.ts';

export interface MatChoice {
  readonly paper: MatSheet;
  readonly footMm: number;
  readonly bowlMm?: number;
  /** All glasses of the evening on one mat, or a mat for each flight. An odd-one-out always has its own. */
  readonly set: 'evening' | 'flight';
  /** Numbers of places whose guest writes with the left hand. */
  readonly leftPlaces: readonly number[];
  /** A mat for each place; else one for each hand, to be copied. Kept to each place where orders differ. */
  readonly each: boolean;
}

export interface MatToPrint {
  readonly key: string;
  /** Null: to be copied, for every place of this hand. */
  readonly place: number | null;
  readonly hand: Hand;
  /** Which glasses: flight or odd-one-out from 0, or null for the whole evening. */
  readonly of: { readonly kind: 'flight' | 'trial'; readonly flight: number } | null;
  readonly layout: MatLayout;
  /** In the order of the circles; what stands inside a circle until the glass does. */
  readonly inside: readonly string[];
}

export type MatsToPrint =
  | { readonly fits: true; readonly mats: readonly MatToPrint[] }
  | { readonly fits: false; readonly why: MatTooSmall; readonly flightsWouldFit: boolean };

interface LabelledSet {
  readonly of: MatToPrint['of'];
  readonly labels: readonly string[];
  readonly inside: readonly string[];
}

/** Every mat of an evening with its layout. Throws a RangeError on sizes that no glass has. */
export function matsFor(plan: Plan, choice: MatChoice): MatsToPrint {
  const each = choice.each || placesDiffer(plan);
  const places = each ? Array.from({ length: Math.max(1, plan.guests) }, (_, index) => index + 1) : [null];
  const mats: MatToPrint[] = [];
  for (const place of places) {
    const hands: readonly Hand[] =
      place === null ? ['right', 'left'] : [choice.leftPlaces.includes(place) ? 'left' : 'right'];
    for (const hand of hands) {
      for (const [index, set] of setsAt(plan, place ?? 1, choice.set).entries()) {
        const layout = layOutMat({
          sheet: choice.paper,
          glasses: set.labels.length,
          footMm: choice.footMm,
          ...(choice.bowlMm === undefined ? {} : { bowlMm: choice.bowlMm }),
          hand,
          labels: set.labels,
        });
        if (!layout.fits) {
          const flightsWouldFit =
            choice.set === 'evening' && matsFor(plan, { ...choice, set: 'flight' }).fits;
          return { fits: false, why: layout, flightsWouldFit };
        }
        mats.push({ key: `${place}/${hand}/${index}`, place, hand, of: set.of, layout, inside: set.inside });
      }
    }
  }
  return { fits: true, mats };
}

function setsAt(plan: Plan, place: number, set: MatChoice['set']): LabelledSet[] {
  const sets = glassesAt(plan, place).map((each) => labelled(plan, each));
  if (set === 'flight' || plan.pours.length === 0) return sets;
  const flights = sets.filter(({ of }) => of?.kind === 'flight');
  const whole: LabelledSet = {
    of: null,
    labels: flights.flatMap(({ labels }) => labels),
    inside: flights.flatMap(({ inside }) => inside),
  };
  return [whole, ...sets.filter(({ of }) => of?.kind === 'trial')];
}

function labelled(plan: Plan, set: GlassSet): LabelledSet {
  const of = { kind: set.kind, flight: set.flight };
  if (set.kind === 'trial') {
    return { of, labels: set.glasses.map(({ code }) => code), inside: set.glasses.map(() => '') };
  }
  const pours = set.pours.flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? []);
  return {
    of,
    labels: pours.map((pour) => labelOf(plan, pour)),
    // A blind mat tells nothing; its number in the order of tasting is drawn anyway.
    inside: pours.map((pour) => (plan.blind ? '' : pour.name)),
  };
}

/** The code where pours are blind and have one, else the number. */
export const labelOf = (plan: Plan, pour: Pour): string =>
  (plan.blind ? plan.codes[pour.id] : undefined) ?? String(glassNumbers(plan).get(pour.id) ?? '');

/** `2, 5` as places; undefined where something else was written or a place does not exist. */
export function placesIn(typed: string, places: number): number[] | undefined {
  const parts = typed.split(/[\s,;]+/).filter((part) => part !== '');
  const numbers = parts.map(Number);
  return numbers.every((each) => Number.isInteger(each) && each >= 1 && each <= places)
    ? [...new Set(numbers)]
    : undefined;
}
