import { accessSync, constants, createWriteStream, existsSync, renameSync } from 'node:fs';
import { dirname } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { checkCopy } from '../store/check-copy.ts';
import { masterFileOf } from '../store/seals/seals.ts';
import { openSqliteStore, type SqliteStore } from '../store/sqlite.ts';
import { storeIn } from './data-folder.ts';
import { askAtDoor } from './door.ts';
import { backupBegun, sweepUnfinished } from './unfinished-backups.ts';

/**
 * Writes everything in the data folder's store into `file`, whether the server runs or not, and reads it back before
 * saying so. Neither the house key nor the key of the notes is in it. Throws a sentence that says what to do.
 */
export async function backUp(folder: string, file: string): Promise<string> {
  if (existsSync(file))
    throw new Error(`${file} exists already: name a new file, so that no backup is lost.`);
  const source = storeIn(folder);
  if (!existsSync(source)) {
    throw new Error(`There is no store in ${folder}: name its folder in QUIETPOUR_DATA.`);
  }
  const part = `${file}.part`;
  let ended = (): void => undefined;
  try {
    accessSync(dirname(file), constants.W_OK);
    sweepUnfinished(folder);
    ended = backupBegun(folder, part);
    const store = openUnlessServed(source);
    if (store === undefined) await fetchFromServer(folder, part);
    else await store.backup(part).finally(() => store.close());
    const tastings = checkCopy(part);
    renameSync(part, file);
    return `${file} holds ${tastings} ${tastings === 1 ? 'tasting' : 'tastings'} and was read back without a fault. Guests’ notes in it are sealed and open only with ${masterFileOf(source)}, which is not in it: keep a copy of that file in another place. What guests have forgotten by later is still in this backup.`;
  } catch (error) {
    throw withoutRoom(error, file);
  } finally {
    ended();
  }
}

/** Undefined when a server holds the store. */
export function openUnlessServed(source: string): SqliteStore | undefined {
  try {
    return openSqliteStore(source);
  } catch (error) {
    if (error instanceof Error && error.message.includes('(SQLITE_BUSY')) return undefined;
    throw error;
  }
}

async function fetchFromServer(folder: string, part: string): Promise<void> {
  const socket = await askAtDoor(folder, ['backup']).catch((error: unknown) => {
    throw new Error(
      'A server uses this store and cannot be asked for a backup: stop it, then back up again.',
      {
        cause: error,
      },
    );
  });
  await pipeline(socket, createWriteStream(part, { mode: 0o600 }));
}

function withoutRoom(error: unknown, file: string): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOSPC')
    return new Error(`There is no room for ${file}: free some space, then back up again.`);
  if (/^(ENOENT|EACCES|EROFS|ENOTDIR)$/.test(code)) {
    return new Error(`${file} cannot be written (${code}): name a file in a folder of yours.`, {
      cause: error,
    });
  }
  return error;
}
