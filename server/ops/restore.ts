import { closeSync, copyFileSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync } from 'node:fs';
import { checkCopy } from '../store/check-copy.ts';
import { leaveNotesBehind, opensWith } from '../store/seals/sealed-copy.ts';
import { masterFileOf } from '../store/seals/seals.ts';
import { openSqliteStore } from '../store/sqlite.ts';
import { StoreFailure } from '../store/store.ts';
import { openUnlessServed } from './backup.ts';
import { storeIn } from './data-folder.ts';

export interface RestoreOptions {
  /** Names what is set aside. */
  readonly now: Date;
  /** Leaves the guests' notes behind, for a server that has lost the key of their seals. */
  readonly withoutNotes?: boolean;
}

/**
 * Puts a backup in the place of the store, and carries out in it what guests have forgotten and hosts have deleted since
 * it was made. What was there is set aside under a name with the time, never deleted. Throws a sentence that says what to do.
 */
export async function restore(
  folder: string,
  file: string,
  { now, withoutNotes = false }: RestoreOptions,
): Promise<string> {
  if (!existsSync(file)) throw new Error(`${file} is not there: name the backup that you made.`);
  const tastings = checkCopy(file);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const store = storeIn(folder);
  await mustBeFree(store);
  if (!withoutNotes) mustOpen(store, file);
  // Beside the store first: a copy that breaks off must not stand in its place.
  const part = `${store}.part`;
  copyFileSync(file, part);
  if (withoutNotes) leaveNotesBehind(part);
  const written = openSync(part, 'r+');
  fsyncSync(written);
  closeSync(written);
  const aside = `${store}.before-${now.toISOString().replaceAll(/[:.]/g, '-')}`;
  const had = existsSync(store);
  // The keys go with their store, or what was forgotten later could be read from the one by the other.
  for (const end of ['', '-wal', '-shm', '.keys']) {
    if (existsSync(store + end)) renameSync(store + end, aside + end);
  }
  renameSync(part, store);
  // Here and not at the next start: what was forgotten is gone when this is said to be done.
  const opened = openSqliteStore(store);
  const left = (await opened.tastings.list()).length;
  await opened.close();
  return [
    `${left} ${left === 1 ? 'tasting is' : 'tastings are'} back; start the server again.`,
    ...(left < tastings ? [`${tastings - left} that had been deleted since the backup stayed deleted.`] : []),
    ...(had ? [`What was there before is kept in ${aside}: delete it once you do not need it.`] : []),
  ].join(' ');
}

/** The notes of a backup open with the key of the server that it was made on, and with no other. */
function mustOpen(store: string, file: string): void {
  const key = masterFileOf(store);
  if (opensWith(file, key)) return;
  throw new Error(
    `The guests’ notes in ${file} open only with the notes.key of the server that it was made on: put that file at ${key}, then restore again. If it is lost, "restore ${file} without-notes" brings back the rest.`,
  );
}

/** A damaged store is nobody's and may be set aside as it is. */
async function mustBeFree(store: string): Promise<void> {
  if (!existsSync(store)) return;
  try {
    const held = openUnlessServed(store);
    if (held === undefined) {
      throw new Error('A server uses this store: stop it, restore, then start it again.');
    }
    await held.close();
  } catch (error) {
    if (!(error instanceof StoreFailure)) throw error;
  }
}
