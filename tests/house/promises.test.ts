import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  scripts: Record<string, string>;
};
const attacks = readFileSync(join(root, 'tests/attack/main.ts'), 'utf8');
const table = readme.slice(readme.indexOf('| promise |'), readme.indexOf('## What it does not do'));
const promises = table
  .split('\n')
  .slice(2)
  .filter((line) => line.startsWith('| '))
  .map((line) => line.split(' | '))
  .map(([promise = '', by = '']) => [promise.slice(2), by] as const);

/** Tests are named as `tests/server/door`, or shorter behind the folder that they stand in: `tests/server/`: `door`. */
function* namedBy(by: string): Iterable<string> {
  let folder = '';
  for (const [, name = ''] of by.matchAll(/`([^`]+)`/g)) {
    if (name.startsWith('npm run')) continue;
    if (name.endsWith('/')) folder = name;
    else yield name.startsWith('tests/') ? name : folder + name;
  }
}

describe('each promise in the README', () => {
  it('is read from its table', () => expect(promises.length).toBeGreaterThan(20));

  it.each(promises)('%s: what attacks it is there', (_, by) => {
    const tests = [...namedBy(by)];
    for (const test of tests) expect(existsSync(join(root, `${test}.test.ts`)), test).toBe(true);
    const commands = [...by.matchAll(/`npm run (\w+)(?: -- (\w+))?/g)];
    for (const [, command = '', attack = ''] of commands) {
      expect(Object.keys(scripts)).toContain(command);
      if (command === 'attack') expect(attacks).toContain(`  ${attack}: () =>`);
    }
    expect(tests.length + commands.length).toBeGreaterThan(0);
  });
});
