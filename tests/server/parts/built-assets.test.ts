import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { emptyButAssets, keptFor, letGo, pack } from '../../../server/ops/built-assets.ts';
import { temporaryFolder } from '../support/process.ts';

let folder: ReturnType<typeof temporaryFolder>;
beforeEach(() => {
  folder = temporaryFolder();
  mkdirSync(join(built(), 'assets'), { recursive: true });
});
afterEach(() => folder.remove());

const built = () => join(folder.path, 'guest');

/** As a build does: writes its files, those of before with the same content again. */
function build(at: number, ...names: readonly string[]): void {
  emptyButAssets(built());
  for (const name of names) {
    const file = join(built(), 'assets', name);
    writeFileSync(file, `content of ${name}`);
    utimesSync(file, at / 1000, at / 1000);
  }
  writeFileSync(join(built(), 'index.html'), names.join());
  letGo(built(), at, at);
}
const assets = () => readdirSync(join(built(), 'assets')).toSorted();
const dayOne = Date.UTC(2031, 4, 9, 18, 30);
const hour = 3600 * 1000;

describe('files of an earlier build', () => {
  it('stay for pages that are open while a new one is put in their place, however old they are', () => {
    build(dayOne - 1000 * hour, 'first-1.js', 'shared.js');
    build(dayOne, 'first-2.js', 'shared.js');
    expect(assets()).toEqual(['first-1.js', 'first-2.js', 'shared.js']);
  });

  it('go with the first build after the evening is long over, by when they were superseded', () => {
    build(dayOne, 'first-1.js', 'shared.js');
    build(dayOne + hour, 'first-2.js', 'shared.js');
    build(dayOne + hour + keptFor, 'first-3.js', 'shared.js');
    expect(assets()).toEqual(['first-1.js', 'first-2.js', 'first-3.js', 'shared.js']);
    build(dayOne + 2 * hour + keptFor, 'first-3.js', 'shared.js');
    expect(assets()).toEqual(['first-2.js', 'first-3.js', 'shared.js']);
  });

  it('are of this build again when it names them again', () => {
    build(dayOne, 'first-1.js');
    build(dayOne + hour, 'first-2.js');
    build(dayOne + 2 * hour, 'first-1.js');
    build(dayOne + hour + keptFor, 'first-1.js');
    build(dayOne + 3 * hour + keptFor, 'first-1.js');
    expect(assets()).toEqual(['first-1.js']);
  });

  it('stay alone: a page of before does not', () => {
    build(dayOne, 'first-1.js');
    writeFileSync(join(built(), 'old.html'), '');
    build(dayOne + hour, 'first-2.js');
    expect(existsSync(join(built(), 'old.html'))).toBe(false);
    expect(existsSync(join(built(), 'index.html'))).toBe(true);
  });

  it('are not missed where nothing was ever built', () => {
    emptyButAssets(join(folder.path, 'nowhere'));
    expect(existsSync(join(folder.path, 'nowhere'))).toBe(false);
  });
});

describe('what is text', () => {
  const packed = (name: string) => gunzipSync(readFileSync(join(built(), 'assets', `${name}.gz`))).toString();

  it('is packed once beside itself, and goes with it', () => {
    build(dayOne, 'first-1.js', 'picture.png');
    pack(built());
    expect(assets()).toEqual(['first-1.js', 'first-1.js.gz', 'picture.png']);
    expect(packed('first-1.js')).toBe('content of first-1.js');
    build(dayOne + hour, 'first-2.js', 'picture.png');
    pack(built());
    expect(packed('first-1.js')).toBe('content of first-1.js');
    build(dayOne + 2 * hour + keptFor, 'first-2.js', 'picture.png');
    pack(built());
    expect(assets()).toEqual(['first-2.js', 'first-2.js.gz', 'picture.png']);
  });
});
