import { closeSync, copyFileSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync } from 'node:fs';
import { checkCopy } from '../store/check-copy.ts';
import { StoreFailure } from '../store/store.ts';
import { openUnlessServed } from './backup.ts';
import { storeIn } from './data-folder.ts';

/**
 * Puts a backup in the place of the store. What was there is set aside under a name with the time, never deleted.
 * Throws a sentence that says what to do.
 *
 * @param now names what is set aside
 */
export async function restore(folder: string, file: string, now: Date): Promise<string> {
  if (!existsSync(file)) throw new Error(`${file} is not there: name the backup that you made.`);
  const tastings = checkCopy(file);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const store = storeIn(folder);
  await mustBeFree(store);
  // Beside the store first: a copy that breaks off must not stand in its place.
  const part = `${store}.part`;
  copyFileSync(file, part);
  const written = openSync(part, 'r+');
  fsyncSync(written);
  closeSync(written);
  const aside = `${store}.before-${now.toISOString().replaceAll(/[:.]/g, '-')}`;
  const had = existsSync(store);
  for (const end of ['', '-wal', '-shm']) if (existsSync(store + end)) renameSync(store + end, aside + end);
  renameSync(part, store);
  return [
    `${tastings} ${tastings === 1 ? 'tasting is' : 'tastings are'} back; start the server again.`,
    ...(had ? [`What was there before is kept in ${aside}: delete it once you do not need it.`] : []),
  ].join(' ');
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
