import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Backups that are being written, so that what a kill left of one does not lie about for good: a half copy holds whatever
 * a whole one does, and nobody knows of it. A file for each, which says where the part lies, with the process in its name:
 * the server and a backup's own process write at the same time, and a list of both would have to be locked.
 */
const ending = '.unfinished-backup';
let begun = 0;

/** Answers with what ends it: that removes the part, where it has not become a backup. */
export function backupBegun(folder: string, part: string): () => void {
  begun += 1;
  const mark = join(folder, `${process.pid}-${begun}${ending}`);
  writeFileSync(mark, part, { mode: 0o600 });
  return () => {
    for (const file of [part, mark]) rmSync(file, { force: true });
  };
}

/** Removes what is left of backups whose process is gone. */
export function sweepUnfinished(folder: string): void {
  for (const name of readdirSync(folder).filter((each) => each.endsWith(ending))) {
    const pid = Number.parseInt(name, 10);
    if (pid !== process.pid && runs(pid)) continue;
    const part = readFileSync(join(folder, name), 'utf8');
    // Only ever a part: whatever else somebody put there is not ours to remove.
    if (part.endsWith('.part')) {
      for (const end of ['', '-journal', '-wal', '-shm']) rmSync(part + end, { force: true });
    }
    rmSync(join(folder, name), { force: true });
  }
}

function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Somebody else's process with this number: the one that wrote is gone or not ours to judge.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
