import type { NoteField, NoteValue } from './entry.ts';

/**
 * Two devices of one guest wrote into the same field without knowing of each other. No word may be lost and none
 * doubled: where one text holds the other, the longer stands; otherwise the newer goes below the older.
 * @param stored what the server has
 * @param offered what a device sends, begun from an older revision
 */
function mergeTexts(stored: string, offered: string): string {
  if (stored.includes(offered)) return stored;
  if (offered.includes(stored)) return offered;
  const kept = stored.split('\n');
  const added = offered.split('\n').filter((line) => line.trim() !== '' && !kept.includes(line));
  return [...kept, ...added].join('\n');
}

/** As `mergeTexts` for every kind of field: words and marks of both stand, and of a single answer the newer one. */
export function mergeValues(field: NoteField, stored: NoteValue, offered: NoteValue): NoteValue {
  switch (field) {
    case 'look':
    case 'nose':
    case 'palate':
    case 'finish':
    case 'thoughts':
      return mergeTexts(stored as string, offered as string);
    case 'nose-words':
    case 'palate-words':
    case 'finish-words':
    case 'structure':
    case 'guess':
    case 'review':
      return { ...(stored as Record<string, never>), ...(offered as Record<string, never>) };
    case 'feelings':
      return [...new Set([...(stored as readonly string[]), ...(offered as readonly string[])])];
    case 'colour':
    case 'liking':
    case 'place':
    case 'odd-one-out':
      return offered ?? stored;
    default:
      return field satisfies never;
  }
}
