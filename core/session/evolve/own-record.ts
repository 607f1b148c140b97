/**
 * The records that one replay has made itself. Nobody else has seen them, so that they may be written to in place:
 * copying all seats for each seat would make a replay cost the square of the room.
 */
export type OwnRecords = WeakSet<object>;

/** The record with this entry: the same one when it is the replay's own, otherwise a copy, and own from now on. */
export function withEntry<Value>(
  record: Readonly<Record<string, Value>>,
  key: string,
  value: Value,
  own: OwnRecords,
): Readonly<Record<string, Value>> {
  const mine = ownCopy(record, own);
  mine[key] = value;
  return mine;
}

export function withoutEntry<Value>(
  record: Readonly<Record<string, Value>>,
  key: string,
  own: OwnRecords,
): Readonly<Record<string, Value>> {
  if (!Object.hasOwn(record, key)) return record;
  const mine = ownCopy(record, own);
  delete mine[key];
  return mine;
}

function ownCopy<Value>(record: Readonly<Record<string, Value>>, own: OwnRecords): Record<string, Value> {
  if (own.has(record)) return record;
  const copy = { ...record };
  own.add(copy);
  return copy;
}
