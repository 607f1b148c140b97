import { createReadStream, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { Log } from '../log.ts';
import type { SqliteStore } from '../store/sqlite.ts';
import { backupDoorOf } from './data-folder.ts';
import { backupBegun, sweepUnfinished } from './unfinished-backups.ts';

/**
 * The store is locked for as long as the server runs, so the server itself hands out backups: over a socket in the data
 * folder, not over the network, for a backup holds every guest's notes and no key of a host opens those.
 *
 * Answers with what closes the door. Without one (a path too long for a socket, a file system that has none) the
 * server runs all the same, and a backup needs it to be stopped.
 */
export async function openBackupDoor(
  folder: string,
  store: SqliteStore,
  log: Log,
): Promise<() => Promise<void>> {
  const path = backupDoorOf(folder);
  // The lock on the store says that nobody else serves this folder: what is left here is from a server that was killed.
  rmSync(path, { force: true });
  sweepUnfinished(folder);
  let copies = 0;
  const server = createServer((socket) => {
    copies += 1;
    const copy = join(folder, `backup-${process.pid}-${copies}.part`);
    socket.on('error', () => undefined);
    const ended = backupBegun(folder, copy);
    store
      .backup(copy)
      .then(() => pipeline(createReadStream(copy), socket))
      .catch((error: unknown) => {
        log.error({ reason: error instanceof Error ? error.message : 'unknown' }, 'no backup was made');
        socket.destroy();
      })
      .finally(ended);
  });
  try {
    await listening(server, path);
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? error.code : 'unknown';
    log.warn({ reason }, 'backups need the server to be stopped: no socket can be opened in the data folder');
    return async () => undefined;
  }
  return () => new Promise((resolve) => server.close(() => resolve()));
}

const listening = (server: Server, path: string): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(path, () => {
      server.off('error', reject);
      server.unref();
      resolve();
    });
  });
