import { createReadStream, rmSync } from 'node:fs';
import { connect, createServer, type Server, type Socket } from 'node:net';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { text } from 'node:stream/consumers';
import { pipeline } from 'node:stream/promises';
import { z } from 'zod';
import { reasonOf } from '../guard.ts';
import type { Log } from '../log.ts';
import type { SqliteStore } from '../store/sqlite.ts';
import { doorOf } from './data-folder.ts';
import { backupBegun, sweepUnfinished } from './unfinished-backups.ts';

/** What comes back for what was asked of houses. */
const doorAnswer = z.union([z.strictObject({ said: z.string() }), z.strictObject({ fault: z.string() })]);
/** Ms in which whoever comes to the door says what they want. */
const longestSilence = 5000;
const words = z.array(z.string()).min(1);

export interface DoorParts {
  readonly folder: string;
  readonly store: Pick<SqliteStore, 'backup'>;
  /** Answers what is asked of houses with a sentence, or rejects with one. */
  readonly houses: (asked: readonly string[]) => Promise<string>;
  readonly log: Log;
}

/**
 * The store is locked for as long as the server runs, so the server itself hands out backups and sees to its houses: over a
 * socket in the data folder, not over the network, for a backup holds every guest's notes and no key of a host opens those.
 *
 * Answers with what closes the door. Without one (a path too long for a socket, a file system that has none) the
 * server runs all the same, and either needs it to be stopped.
 */
export async function openDoor({ folder, store, houses, log }: DoorParts): Promise<() => Promise<void>> {
  const path = doorOf(folder);
  // The lock on the store says that nobody else serves this folder: what is left here is from a server that was killed.
  rmSync(path, { force: true });
  sweepUnfinished(folder);
  let copies = 0;
  const backUp = (socket: Socket): Promise<unknown> => {
    copies += 1;
    const copy = join(folder, `backup-${process.pid}-${copies}.part`);
    const ended = backupBegun(folder, copy);
    return store
      .backup(copy)
      .then(() => pipeline(createReadStream(copy), socket))
      .finally(ended);
  };
  const server = createServer((socket) => {
    socket.on('error', () => undefined);
    const serve = async (): Promise<void> => {
      const [what, ...asked] = words.parse(JSON.parse(await firstLine(socket)));
      if (what === 'backup') return void (await backUp(socket));
      const answer = await houses(asked).then(
        (said) => ({ said }),
        (error: unknown) => ({ fault: error instanceof Error ? error.message : 'Nothing came of it.' }),
      );
      socket.end(JSON.stringify(answer satisfies z.infer<typeof doorAnswer>));
    };
    serve().catch((error: unknown) => {
      log.error({ reason: reasonOf(error) }, 'nothing came of what was asked at the door');
      socket.destroy();
    });
  });
  try {
    await listening(server, path);
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? error.code : 'unknown';
    log.warn(
      { reason },
      'backups and houses need the server to be stopped: no socket can be opened in the data folder',
    );
    return async () => undefined;
  }
  return () => new Promise((resolve) => server.close(() => resolve()));
}

/** Rejects with the system's error where no server opens. */
export async function askAtDoor(folder: string, asked: readonly string[]): Promise<Socket> {
  const socket = connect(doorOf(folder));
  await new Promise<void>((resolve, reject) => {
    socket.once('connect', resolve);
    socket.once('error', reject);
  });
  socket.write(`${JSON.stringify(asked)}\n`);
  return socket;
}

/** Undefined when no server runs. Throws the sentence of the server that does. */
export async function housesThroughDoor(
  folder: string,
  asked: readonly string[],
): Promise<string | undefined> {
  const socket = await askAtDoor(folder, ['house', ...asked]).catch(() => undefined);
  if (socket === undefined) return undefined;
  const answer = doorAnswer.parse(JSON.parse(await text(socket)));
  if ('fault' in answer) throw new Error(answer.fault);
  return answer.said;
}

async function firstLine(socket: Socket): Promise<string> {
  for await (const line of createInterface({ input: socket, signal: AbortSignal.timeout(longestSilence) }))
    return line;
  return '';
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
