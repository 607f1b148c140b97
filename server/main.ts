import { mkdirSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { houseKeyIn } from './access/house-key.ts';
import { externalAddresses } from './addresses.ts';
import { announcement } from './announce.ts';
import { startServer } from './app.ts';
import { realChance } from './chance.ts';
import { machineTime, steadyClock } from './clock.ts';
import { stderrLog } from './log.ts';
import { backUp } from './ops/backup.ts';
import { storeIn } from './ops/data-folder.ts';
import { housesThroughDoor, openDoor } from './ops/door.ts';
import { houseErrand } from './ops/houses.ts';
import { goOnWhateverHappens } from './ops/last-resort.ts';
import { restore } from './ops/restore.ts';
import { type Settings, settingsFrom } from './settings.ts';
import type { Cluster } from './store/postgres/cluster.ts';
import { openPostgresStore } from './store/postgres/postgres.ts';
import { masterKeyIn } from './store/seals/master-key.ts';
import { masterFileOf } from './store/seals/seals.ts';
import { openSqliteStore } from './store/sqlite.ts';
import { StoreFailure } from './store/store.ts';

/** Puts the parts together from the environment, says where to go, and runs until it is told to stop. */
async function main(): Promise<void> {
  // What people write is nobody else's on this machine.
  process.umask(0o077);
  const settings = settingsFrom(process.env);
  const [task, file, how] = process.argv.slice(2);
  if (task === 'house') return void console.log(await askedOfHouses(process.argv.slice(3), settings));
  if (task !== undefined) return void console.log(await errand(task, file, how, settings));
  const log = stderrLog(settings.logLevel);
  const { houseKey, store, cluster } = await openData(settings);
  const server = await startServer({
    store,
    houseKey,
    log,
    port: settings.port,
    seatLimit: settings.seatLimit,
    openHouses: settings.openHouses,
    origins: settings.origins,
    callServers: settings.call,
    pages: pagesFolder(import.meta.dirname),
    ...(cluster === undefined ? {} : among(cluster, settings)),
    ...(settings.keepDays === undefined ? {} : { keepFor: settings.keepDays * 24 * 3600 * 1000 }),
    ...(settings.host === undefined ? {} : { host: settings.host }),
    ...(settings.tls === undefined ? {} : { tls: settings.tls }),
  }).catch(async (error: unknown) => {
    await store.close();
    throw await withSentence(error, settings);
  });
  // Only now: a fault before this is one sentence and the end.
  goOnWhateverHappens(process, log);
  const houses = (asked: readonly string[]) =>
    houseErrand(asked, { ...deskFor(settings), houses: store.houses, remove: server.remove });
  const closeDoor =
    'backup' in store ? await openDoor({ folder: settings.data, store, houses, log }) : () => undefined;

  const stop = async () => {
    await closeDoor();
    await server.stop();
    process.exit(0);
  };
  process.once('SIGINT', () => void stop());
  process.once('SIGTERM', () => void stop());
  if ('upgrade' in store && store.upgrade !== undefined) {
    console.log(
      `The store was brought up to date. What was there before, guests’ notes among it, is kept in ${store.upgrade.copy}: delete it once you do not need it.`,
    );
  }
  // Last: whoever reads it may ask the server to stop at once.
  console.log(
    announcement({
      scheme: settings.tls === undefined ? 'http' : 'https',
      port: server.port,
      external: reachable(settings.host),
      origins: settings.origins,
      houseKey,
      data: settings.data,
      terminal: process.stdout.isTTY === true,
    }),
  );
}

/** What can be asked for instead of a server. */
async function errand(
  task: string,
  file: string | undefined,
  how: string | undefined,
  { data, databaseUrl }: Settings,
): Promise<string> {
  if (task !== 'backup' && task !== 'restore') {
    throw new Error('Say "backup FILE", "restore FILE" or "house", or nothing at all to start the server.');
  }
  if (databaseUrl !== undefined) {
    throw new Error(
      'With QUIETPOUR_DATABASE_URL the evenings lie in PostgreSQL: back it up with pg_dump, put it back with pg_restore, and keep notes.key apart from it.',
    );
  }
  if (file === undefined) throw new Error(`Name a file: npm run ${task} -- quietpour-backup.db`);
  if (task === 'backup') return backUp(data, resolve(file));
  return restore(data, resolve(file), { now: new Date(), withoutNotes: how === 'without-notes' });
}

/** Through the door of the server where one runs on a file; a database is asked beside those that run. */
async function askedOfHouses(asked: readonly string[], settings: Settings): Promise<string> {
  const served = settings.databaseUrl ? undefined : await housesThroughDoor(settings.data, asked);
  if (served !== undefined) return served;
  const { store } = await openData(settings);
  try {
    return await houseErrand(asked, { ...deskFor(settings), houses: store.houses });
  } finally {
    await store.close();
  }
}

const deskFor = ({ tls, origins, port }: Settings) => {
  const own = `${tls === undefined ? 'http' : 'https'}://${externalAddresses()[0] ?? 'localhost'}:${port}`;
  return { chance: realChance, now: Date.now, origin: origins[0] ?? own };
};

/** This process as one of several on a database. */
const among = (others: Cluster, { host, ownAddress }: Settings) => ({
  clock: steadyClock({ ...machineTime, wall: () => others.wall() }),
  cluster: {
    others,
    // As often as haproxy.cfg.example looks, and time for one look more.
    seenWithin: 1500,
    address: (port: number) => ownAddress ?? `${host ?? externalAddresses()[0] ?? '127.0.0.1'}:${port}`,
  },
});

async function openData({ data: folder, databaseUrl: url }: Settings) {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    if (url !== undefined) {
      const houseKey = houseKeyIn(folder, realChance);
      const notesKey = masterKeyIn(masterFileOf(storeIn(folder)), true);
      const store = await openPostgresStore({ url, notesKey, houseKey });
      return { store, houseKey, cluster: store.cluster };
    }
    // The store first: its lock keeps a second server away.
    const store = openSqliteStore(storeIn(folder), { inThread: true });
    return { store, houseKey: houseKeyIn(folder, realChance), cluster: undefined };
  } catch (error) {
    if (error instanceof StoreFailure || !(error instanceof Error && 'code' in error)) throw error;
    const sentence = `The data folder ${folder} cannot be written (${error.code}): give this user the right to write there, or name another one in QUIETPOUR_DATA.`;
    throw new Error(sentence, { cause: error });
  }
}

/** Bundled, this file lies beside the pages in `dist`; as source, one floor below it. */
function pagesFolder(here: string): string {
  const bundled = basename(here) === 'server' && basename(dirname(here)) === 'dist';
  return bundled ? dirname(here) : join(here, '..', 'dist');
}

function reachable(host: string | undefined): readonly string[] {
  if (host === undefined || host === '0.0.0.0' || host === '::') return externalAddresses();
  return /^(127\.|localhost$|::1$)/.test(host) ? [] : [host];
}

async function withSentence(error: unknown, { port }: Settings): Promise<unknown> {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'EADDRINUSE') {
    const who = (await isQuietpour(port))
      ? 'another Quietpour, probably your own from before'
      : 'another program';
    return new Error(
      `Port ${port} is taken by ${who}: stop it, or choose another port with "PORT=${port + 1} npm start".`,
      { cause: error },
    );
  }
  if (code === 'EACCES') {
    return new Error(
      `This user may not open port ${port}: choose one above 1023 with "PORT=4680 npm start".`,
      {
        cause: error,
      },
    );
  }
  if (code === 'EADDRNOTAVAIL') {
    return new Error('This machine does not have the address in HOST: leave HOST out to listen on all.', {
      cause: error,
    });
  }
  return error;
}

async function isQuietpour(port: number): Promise<boolean> {
  try {
    const answer = await fetch(`http://127.0.0.1:${port}/healthz`, { signal: AbortSignal.timeout(1000) });
    const body: unknown = await answer.json();
    return typeof body === 'object' && body !== null && 'server' in body && body.server === 'quietpour';
  } catch {
    return false;
  }
}

main().catch((error: unknown) => {
  // One sentence for a person; the rest only for who asks for it.
  console.error(error instanceof Error ? error.message : 'Quietpour could not start.');
  if (process.env.LOG_LEVEL === 'debug') console.error(error);
  process.exit(1);
});
