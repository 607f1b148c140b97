import { closeSync, fdatasyncSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The ms that the disk of temporary files takes for one page now: a commit cannot be quicker. */
export function syncDisk(): number {
  const file = join(tmpdir(), `bench-page-${process.pid}`);
  const page = openSync(file, 'w');
  try {
    const began = performance.now();
    writeSync(page, Buffer.alloc(4096));
    fdatasyncSync(page);
    return performance.now() - began;
  } finally {
    closeSync(page);
    rmSync(file);
  }
}
