import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { trackedSources } from './tree.ts';

const root = new URL('../..', import.meta.url).pathname;
const server = trackedSources().filter((file) => /^server\/.*\.ts$/.test(file));
const lines = server.flatMap((file) =>
  readFileSync(join(root, file), 'utf8')
    .split('\n')
    .map((text, index, all) => ({ at: `${file}:${index + 1}`, file, text, next: all[index + 1] ?? '' })),
);

it('lets the server set alarms on its guarded clock only', () => {
  const timers = /\b(setTimeout|setInterval|setImmediate)\(/;
  const own: readonly RegExp[] = [
    // The clock itself; what waits for a turn of the loop or the end of a connection runs no code of an evening.
    /^server\/clock\.ts$/,
    /^server\/store\/(writer|commit-lane)\.ts$/,
    /^server\/live\/joined-writes\.ts$/,
    /^server\/app\.ts$/,
    /^server\/http\/recap\/recap-material\.ts$/,
    // Between processes: before there is a clock of the evening, and each catches what its alarm throws.
    /^server\/passing\//,
    /^server\/store\/postgres\//,
  ];
  const wild = lines.filter(({ file, text }) => timers.test(text) && !own.some((each) => each.test(file)));
  expect(wild.map(({ at }) => at)).toEqual([]);
  const app = readFileSync(join(root, 'server/app.ts'), 'utf8');
  expect(app.match(/steadyClock/g)).toHaveLength(2);
  expect(app).toMatch(/const clock = guardedClock\(options\.clock \?\? steadyClock\(\)/);
});

it('lets nothing hear a device but through a guard', () => {
  const handlers = /\b(io|socket)\.(on|once|use|onAny)\(/;
  const wild = lines
    .filter(({ file }) => file.startsWith('server/live/'))
    .filter(({ text, next, at }) => {
      if (!handlers.test(text)) return false;
      // Who is let in is asked in a guard of its own, which answers.
      if (/io\.use\(/.test(text)) return false;
      const [name = '', line = ''] = at.split(':');
      const whole = readFileSync(join(root, name), 'utf8');
      const after = whole.split('\n').slice(Number(line), Number(line) + 2);
      // One for all devices is made beforehand, in a guard too.
      const [, handler, called] = /(?:, (\w+)\);|=> (\w+)\()/.exec(text) ?? [];
      const shared = handler ?? called;
      if (shared !== undefined && whole.includes(`const ${shared} = guarded(`)) return false;
      return ![text, next, ...after].some((each) => each.includes('guarded('));
    });
  expect(wild.map(({ at, text }) => `${at} ${text.trim()}`)).toEqual([]);
});
