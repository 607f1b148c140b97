import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import { filesOf, pack } from './archive.ts';
import { playEvenings } from './evenings.ts';
import { storedShapes } from './shapes.ts';

const root = new URL('../..', import.meta.url).pathname;

/**
 * Makes the fixture of the version that package.json names: whole stored evenings, made by the code as it stands. With
 * `pages` the built pages too, in one language, as phones keep them over an upgrade.
 */
export async function makeFixture(pages: boolean): Promise<string> {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const folder = join(root, 'tests/stored', version);
  mkdirSync(folder, { recursive: true });
  const place = mkdtempSync(join(tmpdir(), 'fixture-'));
  try {
    const file = join(place, 'quietpour.db');
    const store = openSqliteStore(file);
    const evenings = await playEvenings(store);
    writeFileSync(join(place, 'evenings.json'), JSON.stringify(evenings));
    writeFileSync(join(place, 'shapes.json'), storedShapes());
    writeFileSync(join(folder, 'store.br'), pack(filesOf(place, (name) => !/-(wal|shm)$/.test(name))));
    if (pages) writeFileSync(join(folder, 'pages.br'), pack(builtPages()));
    return folder;
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}

function builtPages(): Map<string, Buffer> {
  const dist = join(root, 'dist');
  if (!existsSync(join(dist, 'guest')))
    throw new Error('There are no built pages: run `npm run build` first.');
  // One language is enough to play an evening; what only makers or printers look at is left out.
  return filesOf(
    dist,
    (name) =>
      /^(guest|host)\/(en\/|assets\/|[^/]+$)/.test(name) && !/\.(gz|map|png)$|style\.|superseded/.test(name),
  );
}
