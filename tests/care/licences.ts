import { readFileSync } from 'node:fs';

const root = new URL('../..', import.meta.url).pathname;

/** SPDX names of licences that ask for no more than that their text and the authors are kept. */
const permissive = new Set([
  '0BSD',
  'CC0-1.0',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  'ISC',
  'MIT',
  'WTFPL',
  'Zlib',
]);

/** What the lock file says of a package that may be installed here or on another kind of machine. */
export interface Licensed {
  readonly name: string;
  readonly version: string;
  /** An SPDX expression; empty where the package names none. */
  readonly licence: string;
  /** Needed for tests and tools only. */
  readonly development: boolean;
}

interface LockedPackage {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
}

/** Every package in `package-lock.json`, for all kinds of machines. */
export function licensedPackages(): readonly Licensed[] {
  const { packages } = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8')) as {
    readonly packages: Readonly<Record<string, LockedPackage>>;
  };
  return Object.entries(packages)
    .filter(([path]) => path !== '')
    .map(([path, { version = '', license = '', dev = false }]) => ({
      name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
      version,
      licence: license,
      development: dev,
    }));
}

/** Whether one may take such a package without asking more of those who pass the project on. */
export function isPermissive(expression: string): boolean {
  const choices = expression.replaceAll(/[()]/g, '').split(' OR ');
  return choices.some((choice) => choice.split(' AND ').every((each) => permissive.has(each)));
}

/** What is not permissive, or does not say, each once: name and licence; a family of packages under one name with `*`. */
export function otherLicences(
  packages: readonly Licensed[] = licensedPackages(),
): readonly (readonly [name: string, licence: string])[] {
  const found = packages
    .filter(({ licence }) => !isPermissive(licence))
    .map(({ name, licence }) => `${family(name)}\t${licence === '' ? 'none named' : licence}`);
  return [...new Set(found)].toSorted().map((each) => {
    const [name = '', licence = ''] = each.split('\t');
    return [name, licence];
  });
}

/** Native packages come once for each kind of machine. */
const family = (name: string): string =>
  name.replace(/-(?:android|darwin|freebsd|linux|linuxmusl|win32|wasm32)(?:-.+)?$/, '-*');
