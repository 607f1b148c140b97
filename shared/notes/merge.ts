/**
 * Two devices of one guest wrote into the same field without knowing of each other. No word may be lost and none
 * doubled: where one text holds the other, the longer stands; otherwise the newer goes below the older.
 * @param stored what the server has
 * @param offered what a device sends, begun from an older revision
 */
export function mergeTexts(stored: string, offered: string): string {
  if (stored.includes(offered)) return stored;
  if (offered.includes(stored)) return offered;
  const kept = stored.split('\n');
  const added = offered.split('\n').filter((line) => line.trim() !== '' && !kept.includes(line));
  return [...kept, ...added].join('\n');
}
