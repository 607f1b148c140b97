import { type ChildProcess, spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { installPackages, programOf } from '../engines/installed.ts';
import { forgetFolder, temporaryFolder } from './server.ts';
import { until } from './until.ts';

/** Debian's coturn: the relay of README, here on this machine alone. */
export interface Relay {
  readonly port: number;
  /** All that it has said until now. */
  output(): string;
  close(): Promise<void>;
}

const program = () => programOf('turnserver');

/** On Debian, as root, it is installed when it is missing. */
export function installRelay(): void {
  if (program() === undefined) installPackages(['coturn']);
}

/** Whether this machine has a relay; where not, a sentence says what to do, and its tests are left out. */
export function hasRelay(): boolean {
  if (program() !== undefined) return true;
  console.warn(
    'No call is passed through a relay, which this machine does not have. Install it (Debian: "apt-get install -y coturn") and run the tests again.',
  );
  return false;
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });

/** Takes the words of passage that are made with this secret, and hears of this machine's own addresses only. */
export async function openRelay(secret: string): Promise<Relay> {
  const [port, folder] = [await freePort(), await temporaryFolder()];
  const local = '127.0.0.1';
  const child = spawn(program() ?? 'turnserver', [
    '-n',
    ...[`--listening-ip=${local}`, `--relay-ip=${local}`, `--listening-port=${port}`],
    ...['--use-auth-secret', `--static-auth-secret=${secret}`, '--realm=tasting.example', '--fingerprint'],
    ...['--no-tls', '--no-dtls', '--no-cli', '--no-multicast-peers', '--allow-loopback-peers'],
    ...[
      '--log-file=stdout',
      '--simple-log',
      '--verbose',
      `--pidfile=${folder}/pid`,
      `--userdb=${folder}/users`,
    ],
  ]);
  const said: string[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => said.push(String(chunk)));
  const output = () => said.join('');
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  await until('the relay listens', () => {
    if (child.exitCode !== null) throw new Error(`The relay ended at once and said: ${output()}`);
    return output().includes(`UDP listener opened on: ${local}:${port}`) || undefined;
  }).catch((error: unknown) => {
    child.kill('SIGKILL');
    throw error;
  });
  return { port, output, close: () => end(child, ended, folder) };
}

async function end(child: ChildProcess, ended: Promise<void>, folder: string): Promise<void> {
  child.kill('SIGKILL');
  await ended;
  await forgetFolder(folder);
}
