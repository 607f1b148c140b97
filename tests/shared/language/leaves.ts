/** Something that is said: a text, or what makes one from its arguments. */
export type Leaf = string | ((...given: readonly unknown[]) => unknown);

/** A leaf with where it stands: `guest.ts guestWords.door.title`. */
export type Placed = readonly [path: string, leaf: Leaf];

/** Every leaf below a value, in its order. Numbers and the like are no words and are passed over. */
export function leavesOf(value: unknown, path: string): readonly Placed[] {
  if (typeof value === 'string') return [[path, value]];
  if (isSaying(value)) return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => leavesOf(below, `${path}.${key}`));
}

const isSaying = (value: unknown): value is Extract<Leaf, (...given: never) => unknown> =>
  typeof value === 'function';
