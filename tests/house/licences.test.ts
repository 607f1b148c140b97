import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isPermissive, licensedPackages, otherLicences } from '../care/licences.ts';

const notes = readFileSync(new URL('../../server/LICENCES.md', import.meta.url), 'utf8');
const listed = [...notes.matchAll(/^\| `([^`]+)` \| ([^|]+?) \|/gm)].map(([, name, licence]) => [
  name,
  licence,
]);

describe('licences', () => {
  it('are read from the lock file, for every kind of machine', () => {
    const packages = licensedPackages();
    expect(packages.length).toBeGreaterThan(200);
    expect(packages.find(({ name }) => name === 'zod')?.licence).toBe('MIT');
  });

  it('are permissive, or stand in the notes with what they mean, and nothing else does', () => {
    expect(listed).toEqual(otherLicences());
  });

  it('are taken by choice where a package offers one, and whole where it names several', () => {
    expect(isPermissive('(MIT OR GPL-3.0-only)')).toBe(true);
    expect(isPermissive('MIT AND LGPL-3.0-or-later')).toBe(false);
    expect(isPermissive('')).toBe(false);
  });

  it('of a package that nobody has weighed are found', () => {
    const stranger = { name: 'new-thing', version: '1.0.0', licence: 'AGPL-3.0-only', development: false };
    expect(otherLicences([stranger])).toEqual([['new-thing', 'AGPL-3.0-only']]);
  });
});
