import { createHash } from 'node:crypto';

/**
 * The digest of one event of a session: it covers the one before it, so that an event that was changed, moved or taken out
 * of the middle is found, and the first one its tasting. SHA-256, of which 128 bits are kept: this is against disks and
 * stray hands, not against somebody who can write the file and reckon anew.
 */
export const linkOf = (before: string, seq: number, event: string): string =>
  createHash('sha256').update(`${before}\n${seq}\n${event}`).digest('hex').slice(0, 32);
