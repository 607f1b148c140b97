import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unpack, unpackInto } from './archive.ts';
import type { StoredEvening } from './evenings.ts';

const here = import.meta.dirname;

/** Versions that have a fixture, oldest first. */
export const releases: readonly string[] = readdirSync(here, { withFileTypes: true })
  .filter((each) => each.isDirectory() && existsSync(join(here, each.name, 'store.br')))
  .map(({ name }) => name)
  .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));

/** The versions whose pages are kept, oldest first. */
export const releasesWithPages = (): readonly string[] =>
  releases.filter((release) => existsSync(join(here, release, 'pages.br')));

/** Lays the store of a release into a folder, as it was left. @returns the evenings in it */
export function layStore(release: string, folder: string): readonly StoredEvening[] {
  unpackInto(readFileSync(join(here, release, 'store.br')), folder);
  return JSON.parse(readFileSync(join(folder, 'evenings.json'), 'utf8')) as readonly StoredEvening[];
}

export const layPages = (release: string, folder: string): void =>
  unpackInto(readFileSync(join(here, release, 'pages.br')), folder);

/** What the newest fixture says of the stored shapes of its version. */
export const shapesOf = (release: string): string | undefined =>
  unpack(readFileSync(join(here, release, 'store.br')))
    .get('shapes.json')
    ?.toString('utf8');
