import { spawnSync } from 'node:child_process';
import { moments } from '../support/moment.ts';
import { coveringMoments } from './covering-moments.ts';

/**
 * `npm run test:hours [-- --all] [-- WORD ...]`: unit and browser tests at one moment after the other; with words only
 * the files that have one of them in their name. A run at one moment takes as long as the browser part of `npm test`.
 */
const words = process.argv.slice(2);
const all = words.includes('--all');
const files = words.filter((word) => word !== '--all');
const seeds = all ? moments.map((_, seed) => seed) : coveringMoments();

function run(command: string, given: readonly string[], environment: NodeJS.ProcessEnv = {}) {
  return spawnSync(command, given, {
    encoding: 'utf8',
    env: { ...process.env, ...environment },
    maxBuffer: 2 ** 28,
  });
}

const built = run('npm', ['run', '--silent', 'build']);
if (built.status !== 0) {
  console.error(built.stdout, built.stderr);
  process.exit(1);
}
const failed: number[] = [];
for (const seed of seeds) {
  const begun = performance.now();
  const projects = ['unit', 'e2e'].flatMap((project) => ['--project', project]);
  const given = ['vitest', 'run', '--config', 'tests/vitest.config.ts', ...projects, ...files];
  const { status, stdout, stderr } = run('npx', given, { MOMENT: String(seed) });
  const seconds = Math.round((performance.now() - begun) / 1000);
  console.log(`${status === 0 ? 'well ' : 'WRONG'} MOMENT=${seed}: ${moments[seed]?.name} (${seconds} s)`);
  if (status === 0) continue;
  failed.push(seed);
  console.log(stdout, stderr);
}
console.log(
  `${seeds.length} moments, ${failed.length} of them wrong${failed.map((seed) => `, MOMENT=${seed}`).join('')}.`,
);
process.exit(failed.length === 0 ? 0 : 1);
