import { readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { trackedSources, trackedTexts, trackedTopLevel } from './tree.ts';

const root = new URL('../..', import.meta.url).pathname;

/** Which folder may import which. Packages are listed apart, below. */
const mayImport: Record<string, readonly string[]> = {
  core: ['core'],
  shared: ['core', 'shared'],
  server: ['core', 'shared', 'server'],
  host: ['core', 'shared', 'host'],
  guest: ['shared', 'guest'],
  tests: ['core', 'shared', 'server', 'host', 'guest', 'tests'],
};

/** Where a package may be imported; a package that is not named here is free to every folder but core. */
const packageHomes: Record<string, readonly RegExp[]> = {
  'socket.io': [/^server\/live\//, /^server\/app\.ts$/, /^tests\//],
  express: [/^server\//, /^tests\//],
  'better-sqlite3': [/^server\/store\//, /^tests\//],
  'socket.io-client': [/^shared\/follower\//, /^tests\//],
};
const corePackages = ['zod'];

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  const pattern =
    /(?:^|\n)\s*(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/g;
  return [...text.matchAll(pattern)].map((match) => ({
    from: file,
    to: match[2] ?? match[3] ?? '',
    typeOnly: match[1] !== undefined,
  }));
}

const sources = trackedSources();
const imports = sources.flatMap(importsOf);
const isRelative = (to: string) => to.startsWith('.');
const resolved = (entry: Import) =>
  relative(root, join(root, dirname(entry.from), entry.to.split('?')[0] ?? ''));
const folderOf = (path: string) => path.split('/')[0] ?? '';
const packageOf = (to: string) =>
  to
    .split('/')
    .slice(0, to.startsWith('@') ? 2 : 1)
    .join('/');

describe('the house', () => {
  it('has imports to look at', () => {
    expect(sources.length).toBeGreaterThan(3);
  });

  it('lets arrows run one way between folders', () => {
    const wrong = imports
      .filter((entry) => isRelative(entry.to))
      .filter((entry) => !mayImport[folderOf(entry.from)]?.includes(folderOf(resolved(entry))))
      .map((entry) => `${entry.from} -> ${resolved(entry)}`);
    expect(wrong).toEqual([]);
  });

  it("lets the host's app into core only where a plan is recomputed under the finger", () => {
    const open = /^core\/(planning|running-order|drinks|tasting|units|ids)/;
    const wrong = imports
      .filter((entry) => folderOf(entry.from) === 'host' && isRelative(entry.to) && !entry.typeOnly)
      .filter((entry) => folderOf(resolved(entry)) === 'core' && !open.test(resolved(entry)))
      .map((entry) => `${entry.from} -> ${resolved(entry)}`);
    expect(wrong).toEqual([]);
  });

  it('keeps packages where they belong', () => {
    const wrong = imports
      .filter((entry) => !isRelative(entry.to))
      .filter((entry) => {
        const name = packageOf(entry.to);
        if (folderOf(entry.from) === 'core') return !corePackages.includes(name);
        return packageHomes[name]?.some((home) => home.test(entry.from)) === false;
      })
      .map((entry) => `${entry.from} -> ${entry.to}`);
    expect(wrong).toEqual([]);
  });

  it('has no import cycles', () => {
    const edges = new Map<string, string[]>();
    for (const entry of imports.filter((each) => isRelative(each.to) && !each.typeOnly)) {
      edges.set(entry.from, [...(edges.get(entry.from) ?? []), resolved(entry)]);
    }
    const done = new Set<string>();
    const cycles: string[] = [];
    const visit = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) cycles.push([...path.slice(path.indexOf(file)), file].join(' -> '));
      if (done.has(file) || path.includes(file)) return;
      for (const next of edges.get(file) ?? []) visit(next, [...path, file]);
      done.add(file);
    };
    for (const file of sources) visit(file, []);
    expect(cycles).toEqual([]);
  });

  it('keeps clocks, chance, timers and consoles out of core', () => {
    const banned =
      /\bDate\b(?!\.UTC)|\bnew Date\b|Math\.random|\bsetTimeout\b|\bsetInterval\b|\bconsole\b|\bprocess\.|\bdocument\b|\bwindow\b/;
    const wrong = sources
      .filter((file) => file.startsWith('core/'))
      .flatMap((file) =>
        readFileSync(join(root, file), 'utf8')
          .split('\n')
          .map((line) => line.replace(/\/\/.*|^\s*\*.*|\/\*.*?\*\//, ''))
          .flatMap((line, index) => (banned.test(line) ? [`${file}:${index + 1} ${line.trim()}`] : [])),
      );
    expect(wrong).toEqual([]);
  });

  it('keeps files short enough to hold one idea', () => {
    const long = trackedTexts()
      .map((file) => ({ file, lines: readFileSync(join(root, file), 'utf8').split('\n').length }))
      .filter(({ lines }) => lines > 300)
      .map(({ file, lines }) => `${file} (${lines})`);
    expect(long).toEqual([]);
  });

  it('has nothing at the top but the rooms that the design names', () => {
    const known =
      /^(README\.md|DEVELOPERS\.md|package\.json|package-lock\.json|tsconfig\.json|LICENSE|server|host|guest|core|tests|shared|\..*)$/;
    expect(trackedTopLevel().filter((name) => !known.test(name))).toEqual([]);
  });
});
