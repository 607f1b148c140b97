import type { PhotoId } from '../../core/ids.ts';
import { movePour } from '../../core/planning/order/manual-order.ts';
import { type Drink, flightsOf, limits, type Plan, type Pour } from '../../core/tasting.ts';

/** Changes of the lineup as pure functions of the plan; the cuts between flights are held where they were. */
export const sizesOf = (plan: Pick<Plan, 'pours' | 'flightSizes'>): number[] =>
  flightsOf(plan).map(({ pours }) => pours.length);

const withSizes = (plan: Plan, pours: Pour[], sizes: readonly number[]): Plan => ({
  ...plan,
  pours,
  flightSizes: sizes.filter((size) => size > 0),
});

/** The flight, from 0, in which the pour at a position stands. */
function flightAt(sizes: readonly number[], position: number): number {
  let end = 0;
  for (const [flight, size] of sizes.entries()) {
    end += size;
    if (position < end) return flight;
  }
  return Math.max(0, sizes.length - 1);
}

/** Adds what there is room for at the end; the flights are cut anew where they were not cut by hand. */
export function addPours(plan: Plan, added: readonly Pour[]): Plan {
  const room = added.slice(0, limits.pours - plan.pours.length);
  return { ...plan, pours: [...plan.pours, ...room] };
}

export function replacePour(plan: Plan, pour: Pour): Plan {
  return { ...plan, pours: plan.pours.map((each) => (each.id === pour.id ? pour : each)) };
}

/** All pours, and those still to come, of this drink; facts that it does not have are kept, and named beside each pour. */
export const allOf = (plan: Plan, drink: Drink): Plan => ({
  ...plan,
  drink,
  pours: plan.pours.map((pour) => ({ ...pour, drink })),
});

/** Every pour of the drink that it had in the plan before: the undo of `allOf`. */
export function drinksAsBefore(plan: Plan, before: Plan): Plan {
  const had = new Map(before.pours.map(({ id, drink }) => [id, drink]));
  const pours = plan.pours.map((pour) => ({ ...pour, drink: had.get(pour.id) ?? pour.drink }));
  return { ...plan, drink: before.drink, pours };
}

/** One fact of one pour as the plan has it now; undefined takes the fact away. */
export function withFact<Key extends keyof Pour>(
  plan: Plan,
  id: string,
  key: Key,
  value: Pour[Key] | undefined,
): Plan {
  const pour = plan.pours.find((each) => each.id === id);
  if (pour === undefined || pour[key] === value) return plan;
  const { [key]: _, ...rest } = pour;
  return replacePour(plan, (value === undefined ? rest : { ...pour, [key]: value }) as Pour);
}

type Mark = keyof NonNullable<Pour['marks']>;

/** A mark from tasting ahead; without any mark the pour has none. */
export function withMark(plan: Plan, id: string, mark: Mark, value: number | undefined): Plan {
  const { [mark]: _, ...others } = plan.pours.find((each) => each.id === id)?.marks ?? {};
  const marks = value === undefined ? others : { ...others, [mark]: value };
  return withFact(plan, id, 'marks', Object.keys(marks).length === 0 ? undefined : marks);
}

export const labelSides = ['front', 'back'] as const;
export type LabelSide = (typeof labelSides)[number];

/** A label photo of one side; without any photo the pour has none. */
export function withPhoto(plan: Plan, id: string, side: LabelSide, photo: PhotoId | undefined): Plan {
  const { [side]: _, ...others } = plan.pours.find((each) => each.id === id)?.photos ?? {};
  const photos = photo === undefined ? others : { ...others, [side]: photo };
  return withFact(plan, id, 'photos', Object.keys(photos).length === 0 ? undefined : photos);
}

/** Every label photo that some pour of the plan has. */
export const photosIn = ({ pours }: Pick<Plan, 'pours'>): Set<PhotoId> =>
  new Set(pours.flatMap(({ photos }) => labelSides.flatMap((side) => photos?.[side] ?? [])));

export function removePour(plan: Plan, id: string): Plan {
  const position = plan.pours.findIndex((pour) => pour.id === id);
  if (position < 0) return plan;
  const sizes = sizesOf(plan);
  const flight = flightAt(sizes, position);
  return withSizes(
    plan,
    plan.pours.filter((pour) => pour.id !== id),
    sizes.map((size, index) => (index === flight ? size - 1 : size)),
  );
}

/** Where a pour stood: `alone` if it was a flight of its own. */
export interface Place {
  readonly position: number;
  readonly flight: number;
  readonly alone: boolean;
}

export function placeOf(plan: Plan, id: string): Place {
  const position = plan.pours.findIndex((pour) => pour.id === id);
  const sizes = sizesOf(plan);
  const flight = flightAt(sizes, position);
  return { position, flight, alone: sizes[flight] === 1 };
}

/** Puts a pour down where it stood: the undo of a removal. */
export function insertPour(plan: Plan, pour: Pour, { position, flight, alone }: Place): Plan {
  if (plan.pours.length >= limits.pours || plan.pours.some(({ id }) => id === pour.id)) return plan;
  const at = Math.min(Math.max(0, position), plan.pours.length);
  const sizes = sizesOf(plan);
  const pours = [...plan.pours.slice(0, at), pour, ...plan.pours.slice(at)];
  if (alone || flight >= sizes.length) {
    return withSizes(plan, pours, [...sizes.slice(0, flight), 1, ...sizes.slice(flight)]);
  }
  return withSizes(
    plan,
    pours,
    sizes.map((size, index) => (index === flight ? size + 1 : size)),
  );
}

/** The order by ids; pours that are not named stay behind the others. */
export function orderBy(plan: Plan, ids: readonly string[]): Plan {
  const named = ids.flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? []);
  const others = plan.pours.filter((pour) => !ids.includes(pour.id));
  return { ...plan, pours: [...named, ...others], flightSizes: sizesOf(plan) };
}

export function moveTo(plan: Plan, id: string, position: number): Plan {
  return orderBy(
    plan,
    movePour(
      plan.pours.map((pour) => pour.id),
      id,
      position,
    ),
  );
}

/** The break after a flight, from 0, one pour up or down; a flight keeps at least one pour. */
export function moveBreak(plan: Plan, after: number, by: 1 | -1): Plan {
  const sizes = sizesOf(plan);
  const [above, below] = [sizes[after], sizes[after + 1]];
  if (above === undefined || below === undefined || above + by < 1 || below - by < 1) return plan;
  return withSizes(
    plan,
    plan.pours,
    sizes.map((size, index) => (index === after ? size + by : index === after + 1 ? size - by : size)),
  );
}

export function removeBreak(plan: Plan, after: number): Plan {
  const sizes = sizesOf(plan);
  const [above, below] = [sizes[after], sizes[after + 1]];
  if (above === undefined || below === undefined) return plan;
  return withSizes(plan, plan.pours, [...sizes.slice(0, after), above + below, ...sizes.slice(after + 2)]);
}

/** Parts the longest flight in the middle; nothing where every flight is a single pour. */
export function addBreak(plan: Plan): Plan {
  const sizes = sizesOf(plan);
  const longest = Math.max(0, ...sizes);
  if (longest < 2) return plan;
  const at = sizes.indexOf(longest);
  const first = Math.ceil(longest / 2);
  return withSizes(plan, plan.pours, [...sizes.slice(0, at), first, longest - first, ...sizes.slice(at + 1)]);
}

/** Another bottle in the same place of the order, with the same code: only what the glass needs is kept. */
export function anotherBottle({ id, drink, bottleMl, pourMl }: Pour, name: string): Pour {
  return {
    id,
    drink,
    name,
    ...(bottleMl === undefined ? {} : { bottleMl }),
    ...(pourMl === undefined ? {} : { pourMl }),
  };
}
