import { closeSync, fsync, mkdtempSync, openSync, rmSync, write } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { answerParent } from './child.ts';

/** Another process that writes to the disk all the time: large files, several at once, each waited for and written anew. */
const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const [put, sync] = [promisify(write), promisify(fsync)];
const [files, pieces] = [4, 4];
const some = Buffer.alloc(8 << 20, 1);
let written = 0;

async function writeOn(name: string): Promise<never> {
  for (;;) {
    const file = openSync(join(folder, name), 'w');
    for (let piece = 0; piece < pieces; piece += 1)
      await put(file, some, 0, some.length, piece * some.length);
    await sync(file);
    closeSync(file);
    written += pieces * some.length;
  }
}

answerParent(
  {
    begin() {
      for (let file = 0; file < files; file += 1) void writeOn(`busy-${file}`);
    },
    bytes: () => written,
  },
  () => rmSync(folder, { recursive: true, force: true }),
);
