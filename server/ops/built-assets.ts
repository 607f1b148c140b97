import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/**
 * What becomes of the files of earlier builds: a page that is open in an evening under way may still fetch them.
 */

/** Ms for which files stay after the build that no longer names them; longer than any evening. */
export const keptFor = 2 * 24 * 60 * 60 * 1000;

/** Beside the folder and not in it, for what is in it is served. */
const recordOf = (folder: string): string => `${folder}.superseded.json`;

/** Empties an app's folder but for `assets`, whose files are named after their content and so are in nobody's way. */
export function emptyButAssets(folder: string): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) {
    if (name !== 'assets') rmSync(join(folder, name), { recursive: true, force: true });
  }
}

/**
 * To be called when an app's folder has been built anew: notes which of its assets no build names any more and since
 * when, and deletes those that were superseded long enough ago.
 *
 * @param folder with `assets` in it
 * @param begun when the build began, in ms since 1970; what was written since then is of this build
 * @param now ms since 1970
 */
export function letGo(folder: string, begun: number, now: number = Date.now()): void {
  const assets = join(folder, 'assets');
  const before = read(recordOf(folder));
  const since: Record<string, number> = {};
  for (const name of readdirSync(assets)) {
    if (name.endsWith(packing)) continue;
    if (statSync(join(assets, name)).mtimeMs >= begun) continue;
    const at = before[name] ?? now;
    if (now - at <= keptFor) since[name] = at;
    else for (const each of [name, name + packing]) rmSync(join(assets, each), { force: true });
  }
  writeFileSync(recordOf(folder), JSON.stringify(since));
}

/** By name, ms since 1970 at which a file was first found without a build that names it. */
/** Behind the name of what is packed, beside the file itself. */
const packing = '.gz';

/** Packs what is text and not packed yet; what is named after its content never changes. */
export function pack(folder: string): void {
  const assets = join(folder, 'assets');
  for (const name of readdirSync(assets)) {
    if (!/\.(js|css|svg)$/.test(name) || existsSync(join(assets, name + packing))) continue;
    writeFileSync(join(assets, name + packing), gzipSync(readFileSync(join(assets, name)), { level: 9 }));
  }
}

function read(file: string): Readonly<Record<string, number>> {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return {};
  }
}
