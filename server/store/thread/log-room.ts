import { closeSync, fstatSync, fsyncSync, ftruncateSync, openSync, writeSync } from 'node:fs';

/** SQLite folds its log in at 1,000 pages, and each lies there behind a header of 24 bytes. */
const enough = 32 + 1000 * (4096 + 24);
const step = Buffer.alloc(enough >> 3);

/**
 * Room in the write-ahead log before it is needed: to write over what lies there takes half the time on disk of a file that
 * grows, whose new length has to be kept as well. SQLite reads zeros as the end of the log, and writes over them from then
 * on. To be called by the thread that writes, between its commits.
 *
 * @returns whether it is enough, or no more is to be had: a disk that is full is left alone
 */
export function makeRoom(log: string): boolean {
  let file: number | undefined;
  try {
    file = openSync(log, 'r+');
    const { size } = fstatSync(file);
    if (size >= enough) return true;
    try {
      writeSync(file, step, 0, step.length, size);
    } catch {
      ftruncateSync(file, size);
      return true;
    }
    fsyncSync(file);
    return size + step.length >= enough;
  } catch {
    return true;
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
