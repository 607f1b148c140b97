import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/**
 * `npm run mutate [-- --mutate FILE ...]`: breaks the code in small ways, one at a time, and says which of them no test
 * notices. Stryker with what it brings is 140 packages that nothing else needs, so it is installed here on first use
 * instead of with the project. What the words after `--` may be is Stryker's own.
 */
const version = '9.6.1';
const folder = `.cache/stryker-${version}`;
const stryker = `${folder}/node_modules/@stryker-mutator/core/bin/stryker.js`;

function run(command: string, words: readonly string[]): void {
  const { status, error } = spawnSync(command, words, { stdio: 'inherit' });
  if (error !== undefined) throw error;
  if (status !== 0) process.exit(status ?? 1);
}

if (!existsSync(stryker)) {
  // The peers that it asks for are the project's own, which it finds in the folders above.
  const quietly = [
    '--no-save',
    '--no-package-lock',
    '--legacy-peer-deps',
    '--ignore-scripts',
    '--no-audit',
    '--no-fund',
  ];
  const packages = ['core', 'vitest-runner'].map((name) => `@stryker-mutator/${name}@${version}`);
  run('npm', ['install', '--prefix', folder, ...quietly, ...packages]);
}
run(process.execPath, [stryker, 'run', '.stryker.json', ...process.argv.slice(2)]);
