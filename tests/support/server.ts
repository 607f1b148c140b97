import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { patience, until } from './until.ts';

const root = new URL('../..', import.meta.url).pathname;
const built = join(root, 'dist/server/main.js');

/** A server in a process of its own, as a host would run it, on this machine only. */
export interface SpawnedServer {
  /** Without a path. */
  readonly origin: string;
  readonly port: number;
  readonly houseKey: string;
  readonly folder: string;
  /** All that it has printed and logged until now. */
  output(): string;
  /** Stands still, and goes on where it stood. */
  pause(): void;
  goOn(): void;
  /** As a power cut would: nothing is said, finished or flushed. */
  kill(): Promise<void>;
  /** Asks it to end, and takes it down when it does not within five seconds. */
  stop(): Promise<void>;
}

export interface SpawnOptions {
  readonly folder: string;
  /** Absent: any free one. Given to start again where devices expect it. */
  readonly port?: number;
  /** How many may sit at one table; absent: as many as usual. */
  readonly seats?: number;
  /** Of PostgreSQL, for one of several processes. */
  readonly database?: string;
  /** Ms by which the clock on its wall is off. */
  readonly clockOff?: number;
  /** Other origins under which browsers reach it. */
  readonly origins?: readonly string[];
  /** The bundle that `npm run build` makes, or the sources as they stand. */
  readonly from?: 'bundle' | 'sources';
  /** Another bundle, made by `bundleServer`. */
  readonly bundle?: string;
}

export const temporaryFolder = (): Promise<string> => mkdtemp(join(tmpdir(), 'quietpour-'));
export const forgetFolder = (folder: string): Promise<void> => rm(folder, { recursive: true, force: true });

export async function spawnServer({
  folder,
  port = 0,
  seats,
  origins = [],
  database,
  clockOff,
  from = 'sources',
  bundle,
}: SpawnOptions): Promise<SpawnedServer> {
  if (from === 'bundle' && !existsSync(built)) {
    throw new Error('There is no built server in dist/; run `npm run build` first.');
  }
  const own = bundle ?? (from === 'bundle' ? built : undefined);
  const child = spawn(process.execPath, own !== undefined ? [own] : serverCode(), {
    cwd: root,
    env: {
      ...process.env,
      PORT: String(port),
      HOST: '127.0.0.1',
      QUIETPOUR_DATA: folder,
      QUIETPOUR_ORIGINS: origins.join(','),
      ...(seats === undefined ? {} : { QUIETPOUR_SEATS: String(seats) }),
      ...(clockOff === undefined ? {} : shifted(clockOff)),
      ...(database === undefined ? {} : { QUIETPOUR_DATABASE_URL: database }),
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said: string[] = [];
  child.stdout.on('data', (chunk) => said.push(String(chunk)));
  child.stderr.on('data', (chunk) => said.push(String(chunk)));
  const output = () => said.join('');
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const address = await until(
    'the server said where it listens',
    () => {
      if (child.exitCode !== null) throw new Error(`The server ended at once and said: ${output()}`);
      return /:\/\/localhost:(\d+)\/host#key=([\w-]+)/.exec(output());
    },
    patience,
  ).catch((error: Error) => {
    child.kill('SIGKILL');
    throw new Error(`${error.message} Until then it said: ${output() || 'nothing.'}`, { cause: error });
  });
  return {
    origin: `http://127.0.0.1:${address[1]}`,
    port: Number(address[1]),
    houseKey: address[2] ?? '',
    folder,
    output,
    pause: () => void child.kill('SIGSTOP'),
    goOn: () => void child.kill('SIGCONT'),
    async kill() {
      child.kill('SIGKILL');
      await ended;
    },
    stop: () => stopped(child, ended),
  };
}

const shifted = (by: number) => ({
  CLOCK_SHIFT: String(Number(process.env.CLOCK_SHIFT ?? 0) + by),
  ...(process.env.CLOCK_SHIFT === undefined && {
    NODE_OPTIONS: `--import=${join(root, 'tests/support/clock-of-the-test.mjs')}`,
  }),
});

/** What Node runs for a server of the sources as they stand: the bundle that this run has made of them, if it has made one. */
export function serverCode(): string[] {
  const { SERVER_BUNDLE } = process.env;
  return SERVER_BUNDLE === undefined ? ['--import', 'tsx', join(root, 'server/main.ts')] : [SERVER_BUNDLE];
}

/** Bundles the sources as they stand, for a test that starts many servers: one starts in a third of the time. */
export async function bundleServer(name: string): Promise<string> {
  const { SERVER_BUNDLE } = process.env;
  if (SERVER_BUNDLE !== undefined) return SERVER_BUNDLE;
  const folder = join(root, 'dist', name);
  await build({
    configFile: join(root, 'server/vite.config.ts'),
    logLevel: 'silent',
    build: { outDir: folder, emptyOutDir: true, sourcemap: false },
  });
  return join(folder, 'main.js');
}

async function stopped(child: ChildProcess, ended: Promise<void>): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  child.kill('SIGTERM');
  const impatient = setTimeout(() => child.kill('SIGKILL'), 5000);
  await ended;
  clearTimeout(impatient);
}
