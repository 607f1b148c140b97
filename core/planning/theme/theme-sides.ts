import type { PlannedPour } from '../order/axes/pour-facts.ts';

/** A fact by which pours are held together or set apart. */
export type SharedFact = 'country' | 'region' | 'style' | 'producer';

/** What may be the same in all pours of a horizontal. */
export type HeldFact = SharedFact | 'vintage';

/** What sets the sides of a comparison apart; strength and price are cut into steps from low to high. */
export type ComparedFact = SharedFact | 'strength' | 'price';

const plain = (value: string): string => value.trim().toLowerCase();

export const tells = (pour: PlannedPour, fact: HeldFact): string | undefined => {
  const value = pour[fact]?.toString().trim();
  return value === undefined || value === '' ? undefined : value;
};

/** Groups that share a key, each in the order given, groups in the order of their first member. */
export function grouped<K>(
  pours: readonly PlannedPour[],
  key: (pour: PlannedPour) => K | undefined,
): Map<K, PlannedPour[]> {
  const groups = new Map<K, PlannedPour[]>();
  for (const pour of pours) {
    const own = key(pour);
    if (own !== undefined) groups.set(own, [...(groups.get(own) ?? []), pour]);
  }
  return groups;
}

export const byFact = (pours: readonly PlannedPour[], fact: HeldFact): PlannedPour[][] => [
  ...grouped(pours, (pour) => {
    const value = tells(pour, fact);
    return value && plain(value);
  }).values(),
];

/** Two sides of a number, low and high, split at the widest gap; the lower gap of equal ones. */
function lowAndHigh(pours: readonly PlannedPour[], fact: 'abv' | 'priceMinor'): PlannedPour[][] {
  const known = pours
    .filter((pour) => pour[fact] !== undefined)
    .sort((a, b) => (a[fact] ?? 0) - (b[fact] ?? 0) || (a.id < b.id ? -1 : 1));
  const gaps = known.slice(1).map((pour, at) => (pour[fact] ?? 0) - (known[at]?.[fact] ?? 0));
  const widest = Math.max(0, ...gaps);
  if (widest === 0) return known.length === 0 ? [] : [known];
  const cut = gaps.indexOf(widest) + 1;
  return [known.slice(0, cut), known.slice(cut)];
}

/** The sides of a comparison: pours by value, or low and high; pours that do not tell are on no side. */
export function sidesOf(
  by: ComparedFact,
  pours: readonly PlannedPour[],
): readonly (readonly PlannedPour[])[] {
  switch (by) {
    case 'strength':
      return lowAndHigh(pours, 'abv');
    case 'price':
      return lowAndHigh(pours, 'priceMinor');
    case 'country':
    case 'region':
    case 'style':
    case 'producer':
      return byFact(pours, by);
    default:
      return by satisfies never;
  }
}
