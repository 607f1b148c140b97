import { spawnSync } from 'node:child_process';
import { licensedPackages, otherLicences } from './licences.ts';
import { linesInRegistry, testsPassUnder } from './node-lines.ts';

/**
 * `npm run care [-- PART ...]`: what needs the registry or much time, and goes wrong while nobody changes the code: faults
 * that were found in what the project uses, its licences, and the releases of Node that people will run it on.
 */
type Outcome = 'well' | 'wrong' | 'not answered';

const parts = {
  licences(): Outcome {
    const packages = licensedPackages();
    for (const licence of [...new Set(packages.map((each) => each.licence))].toSorted()) {
      const under = packages.filter((each) => each.licence === licence);
      console.log(`${licence === '' ? 'none named' : licence}:`);
      console.log(`  ${under.map(({ name, version }) => `${name} ${version}`).join(', ')}\n`);
    }
    console.log('More than permissive, as server/LICENCES.md explains:');
    for (const [name, licence] of otherLicences()) console.log(`  ${name}: ${licence}`);
    return 'well';
  },
  audit(): Outcome {
    // What only tests use is run by developers, on what they wrote themselves: it is shown, and fails nothing.
    spawnSync('npm', ['audit'], { stdio: 'inherit' });
    const { status, stdout } = spawnSync('npm', ['audit', '--omit=dev', '--json'], { encoding: 'utf8' });
    if (status === 0) return 'well';
    return /"auditReportVersion"/.test(stdout) ? 'wrong' : 'not answered';
  },
  node(): Outcome {
    const failed = linesInRegistry().filter((line) => !testsPassUnder(line));
    for (const line of failed) console.log(`The tests fail under Node ${line}.`);
    return failed.length === 0 ? 'well' : 'wrong';
  },
} as const;
type Part = keyof typeof parts;

const isPart = (word: string): word is Part => Object.hasOwn(parts, word);
const asked = process.argv.slice(2);
const unknown = asked.filter((word) => !isPart(word));
if (unknown.length > 0) {
  console.error(
    `Say ${Object.keys(parts).join(', ')}, or nothing for all of them; not ${unknown.join(', ')}.`,
  );
  process.exit(1);
}
const chosen = asked.length === 0 ? Object.keys(parts).filter(isPart) : asked.filter(isPart);
const outcomes = chosen.map((part) => ({ part, outcome: parts[part]() }));
for (const { part, outcome } of outcomes) console.log(`${part}: ${outcome}`);
process.exit(outcomes.every(({ outcome }) => outcome === 'well') ? 0 : 1);
