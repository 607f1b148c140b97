import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import type { Engine as AnyEngine } from './device.ts';

/** Chromium has a way of its own (`support/browser.ts`); Orca is the screen reader. */
type Engine = Exclude<AnyEngine, 'chromium'> | 'orca';

/** Programs that an engine needs, and the Debian packages that bring them. */
const needed: Readonly<
  Record<Engine, { readonly programs: readonly string[]; readonly packages: readonly string[] }>
> = {
  firefox: { programs: ['firefox-esr|firefox'], packages: ['firefox-esr'] },
  orca: {
    programs: ['orca', 'speech-dispatcher', 'dbus-daemon', 'openbox', 'Xvfb', 'firefox-esr|firefox'],
    packages: [
      'orca',
      'speech-dispatcher',
      'speech-dispatcher-audio-plugins',
      'at-spi2-core',
      'dbus',
      'openbox',
      'xvfb',
      'firefox-esr',
    ],
  },
  webkit: { programs: ['WebKitWebDriver', 'Xvfb'], packages: ['webkit2gtk-driver', 'xvfb'] },
};

/** Where a program lies; undefined where this machine has none of its names. */
export function programOf(names: string): string | undefined {
  const folders = [...(process.env.PATH ?? '').split(delimiter), '/usr/bin'];
  return names
    .split('|')
    .flatMap((name) => folders.map((folder) => join(folder, name)))
    .find(existsSync);
}

const isComplete = (engine: Engine): boolean =>
  needed[engine].programs.every((names) => programOf(names) !== undefined);

/** Whether this machine has the engine; where not, a sentence says what to do, and its tests are left out. */
export function hasEngine(engine: Engine): boolean {
  if (isComplete(engine)) return true;
  console.warn(
    `The evening is not played with ${engine}, which this machine does not have. Install it (Debian: "apt-get install -y ${needed[engine].packages.join(' ')}") and run the tests again.`,
  );
  return false;
}

/** On Debian, as root, what is missing is installed. */
export function installEngine(engine: Engine): void {
  if (!isComplete(engine)) installPackages(needed[engine].packages);
}

/** On Debian, as root; nothing elsewhere. */
export function installPackages(packages: readonly string[]): void {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return;
  const quiet = {
    stdio: 'ignore',
    timeout: 300_000,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  } as const;
  const ask = () => execFileSync('apt-get', ['install', '-y', '--no-install-recommends', ...packages], quiet);
  try {
    ask();
  } catch {
    try {
      // A fresh machine has no list of packages yet.
      execFileSync('apt-get', ['update'], quiet);
      ask();
    } catch {
      // Said in one sentence by the caller.
    }
  }
}

/** What prints in WebKit: the driver has no command for it, so a script does, with Python's bindings of the library. */
const printer = {
  python: '/usr/bin/python3',
  packages: ['python3-gi', 'gir1.2-webkit2-4.1'],
  asked: "import gi; gi.require_version('WebKit2', '4.1'); from gi.repository import WebKit2",
};

const canPrintInWebKit = (): boolean =>
  isComplete('webkit') && spawnSync(printer.python, ['-c', printer.asked], { stdio: 'ignore' }).status === 0;

/** Whether this machine can print in WebKit; where not, a sentence says what to do. Installs it on Debian, as root. */
export function hasWebKitPrinter(): boolean {
  if (canPrintInWebKit()) return true;
  if (isComplete('webkit')) installPackages(printer.packages);
  if (canPrintInWebKit()) return true;
  console.warn(
    `Nothing is printed in WebKit, for which this machine lacks parts. Install them (Debian: "apt-get install -y ${printer.packages.join(' ')}") and run the tests again.`,
  );
  return false;
}

const popplerPackages = ['poppler-utils'];

/** Whether this machine has Poppler, which reads PDF; where not, a sentence says what to do. Installs it on Debian, as root. */
export function hasPoppler(): boolean {
  const isHere = () => ['pdfinfo', 'pdftotext'].every((name) => programOf(name) !== undefined);
  if (!isHere()) installPackages(popplerPackages);
  if (isHere()) return true;
  console.warn(
    `No other program reads the PDFs, for this machine has no Poppler. Install it (Debian: "apt-get install -y ${popplerPackages.join(' ')}") and run the tests again.`,
  );
  return false;
}
