import { spawnSync } from 'node:child_process';
import { moments } from '../support/moment.ts';
import { coveringMoments } from './covering-moments.ts';
import { inTable } from './moment-table.ts';
import { timeOfDayFiles } from './time-of-day-files.ts';

/**
 * `npm run test:hours [-- --all] [-- --from SEED] [-- WORD ...]`: what touches a time of day, at one moment after the
 * other; with words only the files that have one of them in their name. Prints a table of all moments at its end.
 */
const given = process.argv.slice(2);
const all = given.includes('--all');
const begin = given.indexOf('--from') + 1;
const first = begin === 0 ? 0 : Number(given[begin]);
const words = given.filter(
  (word, index) => word !== '--all' && word !== '--from' && (begin === 0 || index !== begin),
);
const files = timeOfDayFiles().filter(
  (file) => words.length === 0 || words.some((word) => file.includes(word)),
);
const seeds = (all ? moments.map((_, seed) => seed) : coveringMoments()).filter((seed) => seed >= first);

function run(command: string, of: readonly string[], environment: NodeJS.ProcessEnv = {}) {
  return spawnSync(command, of, {
    encoding: 'utf8',
    env: { ...process.env, ...environment },
    maxBuffer: 2 ** 28,
  });
}

if (files.length === 0) {
  console.error(`No file of tests that touches a time of day has ${words.join(' or ')} in its name.`);
  process.exit(1);
}
const built = run('npm', ['run', '--silent', 'build']);
if (built.status !== 0) {
  console.error(built.stdout, built.stderr);
  process.exit(1);
}
console.log(`${files.length} files of tests, ${seeds.length} moments.`);
const went = new Map<number, { readonly well: boolean; readonly seconds: number }>();
for (const seed of seeds) {
  const begun = performance.now();
  const projects = ['unit', 'e2e'].flatMap((project) => ['--project', project]);
  const command = ['vitest', 'run', '--config', 'tests/vitest.config.ts', ...projects, ...files];
  const { status, stdout, stderr } = run('npx', command, { MOMENT: String(seed) });
  const seconds = Math.round((performance.now() - begun) / 1000);
  went.set(seed, { well: status === 0, seconds });
  console.log(`${status === 0 ? 'well ' : 'WRONG'} MOMENT=${seed}: ${moments[seed]?.name} (${seconds} s)`);
  if (status !== 0) console.log(stdout, stderr);
}
console.log(inTable(went));
process.exit([...went.values()].every(({ well }) => well) ? 0 : 1);
