import type { PourId } from '../../core/ids.ts';

/** A ranking from the best down; pours of one tier are as good as each other. No tier is empty. */
export type Tiers = readonly (readonly PourId[])[];

/** As places say it; what has no place yet comes after those that have, in its own order. */
export function tiersFrom(pours: readonly PourId[], placeOf: (pour: PourId) => number | null): Tiers {
  const placed = pours
    .flatMap((pour) => {
      const place = placeOf(pour);
      return place === null ? [] : [{ pour, place }];
    })
    .sort((one, other) => one.place - other.place);
  const places = [...new Set(placed.map(({ place }) => place))];
  const rest = pours.filter((pour) => placeOf(pour) === null);
  return [
    ...places.map((place) => placed.filter((each) => each.place === place).map(({ pour }) => pour)),
    ...rest.map((pour) => [pour]),
  ];
}

/** Places from 1; tied ones share the best of their places, and the next one counts all that stand before it. */
export function placesOf(tiers: Tiers): { readonly pour: PourId; readonly place: number }[] {
  let before = 0;
  return tiers.flatMap((tier) => {
    const place = before + 1;
    before += tier.length;
    return tier.map((pour) => ({ pour, place }));
  });
}

/** One tier towards the best: out of a tie it goes in front of it, from a tier of its own in front of the next. */
export const raised = (tiers: Tiers, pour: PourId): Tiers => moved(tiers, pour, 'up');
export const lowered = (tiers: Tiers, pour: PourId): Tiers => moved(tiers, pour, 'down');

function moved(tiers: Tiers, pour: PourId, way: 'up' | 'down'): Tiers {
  const at = tiers.findIndex((tier) => tier.includes(pour));
  const tied = (tiers[at]?.length ?? 0) > 1;
  const gap = way === 'up' ? (tied ? at : at - 1) : tied ? at + 1 : at + 2;
  return at === -1 || gap < 0 || gap > tiers.length ? tiers : inserted(tiers, pour, gap);
}

/** Puts a pour alone into the gap before the tier with this index; the number of tiers is the gap below all. */
export function inserted(tiers: Tiers, pour: PourId, gap: number): Tiers {
  const without = (tier: readonly PourId[]) => tier.filter((each) => each !== pour);
  const before = tiers.slice(0, Math.max(0, gap)).map(without);
  const after = tiers.slice(Math.max(0, gap)).map(without);
  return [...before, [pour], ...after].filter((tier) => tier.length > 0);
}

/** As good as `other`, behind it in its tier. */
export function joined(tiers: Tiers, pour: PourId, other: PourId): Tiers {
  if (pour === other || !tiers.flat().includes(pour)) return tiers;
  return tiers
    .map((tier) => tier.filter((each) => each !== pour))
    .map((tier) => tier.flatMap((each) => (each === other ? [each, pour] : [each])))
    .filter((tier) => tier.length > 0);
}

export const isTiedToAbove = (tiers: Tiers, pour: PourId): boolean =>
  tiers.some((tier) => tier.indexOf(pour) > 0);

/** The tier that begins with this pour joins the one above; from within a tier, it and those below it part again. */
export function tieTurned(tiers: Tiers, pour: PourId): Tiers {
  const at = tiers.findIndex((tier) => tier.includes(pour));
  const tier = tiers[at];
  if (tier === undefined) return tiers;
  const within = tier.indexOf(pour);
  if (within > 0)
    return [...tiers.slice(0, at), tier.slice(0, within), tier.slice(within), ...tiers.slice(at + 1)];
  if (at === 0) return tiers;
  return [...tiers.slice(0, at - 1), [...(tiers[at - 1] ?? []), ...tier], ...tiers.slice(at + 1)];
}
