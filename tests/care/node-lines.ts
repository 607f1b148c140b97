import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const root = new URL('../..', import.meta.url).pathname;

/** The two newest release lines of Node that get long-term support: those with an even number (nodejs.org, releases). */
function supportedLines(versions: readonly string[]): readonly number[] {
  const lines = new Set(versions.map((version) => Number(version.split('.')[0])));
  return [...lines]
    .filter((line) => line % 2 === 0)
    .toSorted((one, other) => other - one)
    .slice(0, 2);
}

export function linesInRegistry(): readonly number[] {
  const answer = execFileSync('npm', ['view', 'node', 'versions', '--json'], { encoding: 'utf8' });
  return supportedLines(JSON.parse(answer) as string[]);
}

/**
 * Runs the unit and server tests under the newest Node of a release line, in a copy of the project with native parts
 * built for it; both under `.cache/`.
 *
 * @returns whether all went well; what went wrong has been printed by whoever met it
 */
export function testsPassUnder(line: number): boolean {
  const home = join(root, '.cache/care', `node-${line}`);
  const node = nodeOf(line, home);
  const copy = join(home, 'project');
  copyProject(copy);
  const environment = {
    ...process.env,
    PATH: `${join(node, 'bin')}:${process.env.PATH}`,
    // Its own headers: native parts are built without asking anybody for them.
    npm_config_nodedir: node,
  };
  const run = (command: string, ...words: string[]): boolean =>
    spawnSync(command, words, { cwd: copy, stdio: 'inherit', env: environment }).status === 0;
  const projects = ['unit', 'server'].flatMap((project) => ['--project', project]);
  return (
    run('node', '--version') &&
    run('npm', 'ci', '--no-audit', '--no-fund') &&
    run('npm', 'run', 'build') &&
    run('npx', 'vitest', 'run', '--config', 'tests/vitest.config.ts', ...projects)
  );
}

/** The newest of a line, as the registry carries it for this machine, with its headers. */
function nodeOf(line: number, home: string): string {
  // The registry says `win` where Node says `win32`.
  const name = `node-${process.platform.replace('win32', 'win')}-${process.arch}`;
  mkdirSync(home, { recursive: true });
  const quietly = ['--no-save', '--no-package-lock', '--no-audit', '--no-fund', '--loglevel=error'];
  execFileSync('npm', ['install', '--prefix', home, ...quietly, `${name}@${line}`], { stdio: 'inherit' });
  return join(home, 'node_modules', name);
}

/** What git tracks or would track, in a repository of its own, because tests ask git what there is. */
function copyProject(copy: string): void {
  rmSync(copy, { recursive: true, force: true });
  const asked = ['ls-files', '-z', '--cached', '--others', '--exclude-standard'];
  const files = execFileSync('git', asked, { cwd: root, encoding: 'utf8' }).split('\0');
  for (const file of files.filter((each) => each !== '' && existsSync(join(root, each))))
    cpSync(join(root, file), join(copy, file));
  execFileSync('git', ['init', '--quiet'], { cwd: copy });
}
