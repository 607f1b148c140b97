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

const foldersAbove = (file: string): string[] =>
  file.split('/').map((_, depth, parts) => parts.slice(0, depth).join('/'));

/** What stands directly in a folder, a file or a folder of its own, that this file is or belongs to. */
const within = (folder: string, file: string): string | undefined =>
  folder === '' || file.startsWith(`${folder}/`)
    ? file.slice(folder === '' ? 0 : folder.length + 1).split('/')[0]
    : undefined;

/** Each circle that following the arrows leads into, by the names that it passes. */
function circlesIn(arrows: readonly (readonly [string | undefined, string | undefined])[]): string[][] {
  const next = new Map<string, Set<string>>();
  for (const [from = '', to = ''] of arrows) next.set(from, (next.get(from) ?? new Set()).add(to));
  const done = new Set<string>();
  const circles: string[][] = [];
  const visit = (name: string, path: readonly string[]): void => {
    if (path.includes(name)) circles.push([...path.slice(path.indexOf(name)), name]);
    if (done.has(name) || path.includes(name)) return;
    for (const each of next.get(name) ?? []) visit(each, [...path, name]);
    done.add(name);
  };
  for (const name of next.keys()) visit(name, []);
  return circles;
}

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
    const open = /^core\/(planning|running-order|drinks|tasting|units|ids|guess\/asked-facts)/;
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

  it('has no circle between neighbours, files or folders, at any depth, types included', () => {
    const files = imports
      .filter((entry) => isRelative(entry.to))
      .map((entry) => [entry.from, resolved(entry)] as const);
    // Proofs may lean on one another's folders.
    const folders = [...new Set(sources.flatMap(foldersAbove))].filter((folder) => folder !== 'tests');
    const circles = folders.flatMap((folder) => {
      const arrows = files
        .map(([from, to]) => [within(folder, from), within(folder, to)] as const)
        .filter(([from, to]) => from !== undefined && to !== undefined && from !== to);
      return circlesIn(arrows).map((circle) => `${folder || 'the whole'}: ${circle.join(' -> ')}`);
    });
    expect(circles).toEqual([]);
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
