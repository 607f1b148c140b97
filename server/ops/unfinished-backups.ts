import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Backups that are being written, so that what a kill left of one does not lie about for good: a half copy holds whatever
 * a whole one does, and nobody knows of it.
 */
interface Unfinished {
  readonly part: string;
  readonly pid: number;
}

const listIn = (folder: string): string => join(folder, 'unfinished-backups.json');

export function backupBegun(folder: string, part: string): void {
  write(folder, [...read(folder), { part, pid: process.pid }]);
}

/** Removes the part, where it has not become a backup. */
export function backupEnded(folder: string, part: string): void {
  rmSync(part, { force: true });
  write(
    folder,
    read(folder).filter((each) => each.part !== part),
  );
}

/** Removes what is left of backups whose process is gone. */
export function sweepUnfinished(folder: string): void {
  const all = read(folder);
  const left = all.filter(({ pid }) => pid !== process.pid && runs(pid));
  for (const each of all) {
    if (!left.includes(each)) {
      for (const end of ['', '-journal', '-wal', '-shm']) rmSync(each.part + end, { force: true });
    }
  }
  if (left.length !== all.length) write(folder, left);
}

function write(folder: string, list: readonly Unfinished[]): void {
  if (list.length === 0) rmSync(listIn(folder), { force: true });
  else {
    // Whole or not at all: of a list that a kill has cut short nothing would be swept any more.
    writeFileSync(`${listIn(folder)}.new`, JSON.stringify(list), { mode: 0o600 });
    renameSync(`${listIn(folder)}.new`, listIn(folder));
  }
}

function read(folder: string): Unfinished[] {
  try {
    const list: unknown = JSON.parse(readFileSync(listIn(folder), 'utf8'));
    return Array.isArray(list) ? list.filter(isUnfinished) : [];
  } catch {
    return [];
  }
}

/** Only ever a part: whatever else stands in the list is not ours to remove. */
const isUnfinished = (value: unknown): value is Unfinished =>
  typeof value === 'object' &&
  value !== null &&
  'part' in value &&
  typeof value.part === 'string' &&
  value.part.endsWith('.part') &&
  'pid' in value &&
  typeof value.pid === 'number';

function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Somebody else's process with this number: the one that wrote is gone or not ours to judge.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
