import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const root = new URL('../..', import.meta.url).pathname;

/**
 * What was built, once more under another version, as after an update: every guest's page names another script, and its
 * worker is another. Files of the old version stay, as a build leaves them.
 *
 * @returns the server's bundle in it
 */
export function makeNextVersion(): string {
  const folder = join(root, '.cache/next-version/dist');
  rmSync(folder, { recursive: true, force: true });
  cpSync(join(root, 'dist'), folder, { recursive: true });
  const guest = join(folder, 'guest');
  const assets = join(guest, 'assets');
  // Under other names, which for scripts that name each other by where they stand is another folder.
  const files = readdirSync(assets).filter((each) => /\.(js|css)$/.test(each));
  for (const each of files) cpSync(join(assets, each), join(assets, 'next', each));
  const renamed = (text: string) => text.replaceAll(/\/assets\/([\w-]+\.(?:js|css))/g, '/assets/next/$1');
  for (const name of readdirSync(guest).filter((each) => each.startsWith('worker.'))) {
    const language = name.split('.')[1] ?? '';
    const page = join(guest, language, 'index.html');
    const html = readFileSync(page, 'utf8').replace('<html ', '<html data-version="next" ');
    writeFileSync(page, renamed(html));
    const worker = readFileSync(join(guest, name), 'utf8').replace(/build:`[^`]+`/, 'build:`next`');
    if (!worker.includes('build:`next`')) throw new Error('The worker does not say which build it is of.');
    writeFileSync(join(guest, name), renamed(worker));
  }
  return join(folder, 'server/main.js');
}
