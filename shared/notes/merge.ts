import { fieldShapes, type NoteField, type NoteValue } from './entry.ts';

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
  const shape = fieldShapes[field];
  switch (shape) {
    case 'text':
      return mergeTexts(stored as string, offered as string);
    case 'marks':
      return { ...(stored as Record<string, never>), ...(offered as Record<string, never>) };
    case 'list':
      return [...new Set([...(stored as readonly string[]), ...(offered as readonly string[])])];
    case 'answer':
      return offered ?? stored;
    default:
      return shape satisfies never;
  }
}
