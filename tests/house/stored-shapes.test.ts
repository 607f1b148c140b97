import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { releases, shapesOf } from '../stored/releases.ts';
import { storedShapes } from '../stored/shapes.ts';

const root = new URL('../..', import.meta.url).pathname;
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };

it('keeps whole evenings of this version, as they are stored today', () => {
  // What a host has on disk changes only with evenings that prove it: "A stored shape" in DEVELOPERS.md.
  expect(releases.at(-1), 'run `npm run fixture`').toBe(version);
  expect(shapesOf(version), 'a stored shape has changed: run `npm run fixture`').toBe(storedShapes());
});
