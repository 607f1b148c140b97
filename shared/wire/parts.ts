/**
 * A view that grows with the room, cut into parts by key, in the order in which they stand. Whoever follows it is sent
 * what changed. A part is never changed in place: another value is another object.
 */
export type Parts<Part> = ReadonlyMap<string, Part>;

/** Key, value, and for what is new the key that it stands behind: null for the very first place. */
export type PutPart<Part> = readonly [key: string, part: Part, behind?: string | null];

export interface PartsChange<Part> {
  readonly gone: readonly string[];
  /** In the order of the parts: what one stands behind is there already, or put before it. */
  readonly put: readonly PutPart<Part>[];
}

/** What makes `from` into `to`. Parts that change places are put anew. */
export function changeBetween<Part>(from: Parts<Part>, to: Parts<Part>): PartsChange<Part> {
  if (from === to) return { gone: [], put: [] };
  const gone = [...from.keys()].filter((key) => !to.has(key));
  const put: PutPart<Part>[] = [];
  const staying = [...from.keys()].filter((key) => to.has(key));
  let found = 0;
  let behind: string | null = null;
  for (const [key, part] of to) {
    const stays = staying[found] === key;
    if (stays) found += 1;
    if (!stays) put.push([key, part, behind]);
    else if (from.get(key) !== part) put.push([key, part]);
    behind = key;
  }
  return { gone, put };
}

/** The parts after a change. */
export function withChange<Part>(parts: Parts<Part>, { gone, put }: PartsChange<Part>): Parts<Part> {
  const entries = [...parts].filter(([key]) => !gone.includes(key));
  const placeOf = (key: string | null) => entries.findLastIndex(([each]) => each === key);
  for (const [key, part, behind] of put) {
    const was = parts.has(key) ? placeOf(key) : -1;
    if (behind === undefined) entries[was] = [key, part];
    else {
      if (was >= 0) entries.splice(was, 1);
      entries.splice(placeOf(behind) + 1, 0, [key, part]);
    }
  }
  return new Map(entries);
}
