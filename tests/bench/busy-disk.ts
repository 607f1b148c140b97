import { fdatasync, mkdtempSync, openSync, rmSync, write } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { answerParent } from './child.ts';

/** Another process that writes to the disk all the time, and waits for it after every 4 MB. */
const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const [put, sync] = [promisify(write), promisify(fdatasync)];
let written = 0;

async function writeOn(): Promise<never> {
  const file = openSync(join(folder, 'busy'), 'w');
  const some = Buffer.alloc(4 << 20, 1);
  for (;;) {
    await put(file, some, 0, some.length, (written % 64) * some.length);
    await sync(file);
    written += 1;
  }
}

answerParent(
  {
    begin: () => void writeOn(),
    megabytes: () => written * 4,
  },
  () => rmSync(folder, { recursive: true, force: true }),
);
