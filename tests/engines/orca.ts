import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { until } from '../support/until.ts';
import { end, openDisplay } from './display.ts';

/** A screen reader at work on a display of its own. */
export interface Orca {
  /** For programs that it shall read. */
  readonly world: NodeJS.ProcessEnv;
  /** What it has said since the last question, once it says nothing more. */
  said(): Promise<string[]>;
  close(): Promise<void>;
}

/** So long after its last word it has said all, in ms; and no longer than this in all. */
const silenceMs = 3000;
const longestMs = 15_000;

/** The module that makes no sound, with a library for sound that does without a device. */
const silently =
  'AddModule "dummy" "sd_dummy" ""\nDefaultModule dummy\nAudioOutputMethod "libao"\nTimeout 0\n';

/** Orca, whose speech goes to speech-dispatcher's module that makes no sound, and into its log. */
export async function openOrca(): Promise<Orca> {
  const home = mkdtempSync(join(tmpdir(), 'orca-'));
  const log = join(home, 'orca.log');
  const { display, screen } = await openDisplay();
  const world: NodeJS.ProcessEnv = {
    ...process.env,
    HOME: home,
    XDG_RUNTIME_DIR: home,
    DISPLAY: display,
    GNOME_ACCESSIBILITY: '1',
    LC_ALL: 'C.UTF-8',
  };
  const bus = spawn('dbus-daemon', ['--session', '--print-address', '--nofork', '--nopidfile'], {
    env: world,
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  world.DBUS_SESSION_BUS_ADDRESS = await new Promise<string>((resolve, reject) => {
    bus.once('error', reject);
    bus.stdout?.once('data', (address: Buffer) => resolve(String(address).trim()));
  });
  const start = (program: string, ...args: string[]) => spawn(program, args, { env: world, stdio: 'ignore' });
  const settings = join(home, 'speech');
  mkdirSync(join(settings, 'modules'), { recursive: true });
  writeFileSync(join(settings, 'speechd.conf'), silently);
  const speech = start('speech-dispatcher', '--run-single', '-C', settings);
  const launcher = '/usr/libexec/at-spi-bus-launcher';
  const tree = spawn(launcher, ['--launch-immediately', '--a11y=1', '--screen-reader=1'], {
    env: world,
    stdio: 'ignore',
    // It starts a bus and a registry of its own, which end with its group.
    detached: true,
  });
  await until('speech-dispatcher listens', () => existsSync(join(home, 'speech-dispatcher/speechd.sock')));
  await new Promise((resolve) => setTimeout(resolve, 1500));
  // Without somebody who manages windows none is ever the active one, of which alone it speaks.
  const windows = start('openbox');
  const orca = start('orca', `--debug-file=${log}`, '-u', join(home, 'settings'), '--replace');
  let read = 0;
  const spoken = (): string[] =>
    (existsSync(log) ? readFileSync(log, 'utf8') : '')
      .split('\n')
      .flatMap((line) => /SPEECH OUTPUT: '(.*)'\s*\{/u.exec(line)?.[1] ?? []);
  const said = async (): Promise<string[]> => {
    const giveUpAt = performance.now() + longestMs;
    let [count, since] = [spoken().length, performance.now()];
    while (performance.now() < since + silenceMs && performance.now() < giveUpAt) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      const now = spoken().length;
      if (now !== count) [count, since] = [now, performance.now()];
    }
    const all = spoken();
    const fresh = all.slice(read);
    read = all.length;
    return fresh;
  };
  const close = async (): Promise<void> => {
    for (const each of [orca, speech, windows]) await end(each);
    if (tree.pid !== undefined) process.kill(-tree.pid, 'SIGTERM');
    for (const each of [bus, screen]) await end(each);
    rmSync(home, { recursive: true, force: true });
  };
  try {
    await until('Orca greets', () => spoken().length > 0, 200_000);
  } catch (error) {
    await close();
    throw error;
  }
  await said();
  return { world, said, close };
}
