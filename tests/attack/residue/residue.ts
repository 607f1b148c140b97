import { fork } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { seatId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { backUp } from '../../../server/ops/backup.ts';
import { restore } from '../../../server/ops/restore.ts';
import { openSqliteStore, type SqliteStore } from '../../../server/store/sqlite.ts';
import { planOf } from '../../support/plans.ts';
import { forgetFolder, temporaryFolder } from '../../support/server.ts';
import { Chances } from '../chances.ts';
import { canariesIn } from '../secrets/canary.ts';
import { type Forgotten, forget, guests, tastings, write } from './words.ts';

export interface ResidueOptions {
  /** How many words are written in all, besides those of processes that are killed. */
  readonly words: number;
  /** How often a process is killed while it writes and forgets, and as often while it backs up. */
  readonly kills: number;
  readonly seed: number;
}

export interface Residue {
  readonly words: number;
  readonly forgotten: number;
  readonly deleted: number;
  readonly backups: number;
  readonly files: number;
  /** Empty when no word is in any file, and none comes back. */
  readonly findings: readonly string[];
}

/**
 * Writes words, writes over them, forgets guests, deletes an evening, and makes backups in between; then looks for any word
 * in every byte of every file, and for those that were forgotten in what an older backup brings back. The files are read while they are in
 * use, and after processes were killed in the middle of writing, forgetting and backing up.
 */
export async function seekResidue({ words, kills, seed }: ResidueOptions): Promise<Residue> {
  const chances = new Chances(seed);
  const folder = await temporaryFolder();
  const data = join(folder, 'data');
  mkdirSync(data);
  const file = join(data, 'quietpour.db');
  const findings: string[] = [];
  const forgotten: Forgotten = new Map();
  const backups: string[] = [];
  let files = 0;
  const look = (when: string): void => {
    for (const path of filesIn(folder)) {
      files += 1;
      for (const { as } of canariesIn(readFileSync(path).toString('latin1')))
        findings.push(`${as} in ${path} ${when}`);
    }
  };
  try {
    let store = openSqliteStore(file, { inThread: true });
    for (const [index, tasting] of tastings.entries()) {
      const code = `ABC23${index}`;
      await store.tastings.create({ tasting, code, plan: planOf(3), revision: 1, createdAt: epochMs(0) });
    }
    const revisions = new Map<string, number>();
    for (let word = 0; word < words; word += 1) {
      await write(store, word, chances, revisions, forgotten);
      if (chances.happens(0.02)) await forget(store, chances, forgotten);
      if (backups.length < 4 && word === Math.floor(((backups.length + 1) * words) / 5)) {
        look('while in use');
        await store.close();
        const copy = join(folder, `backup-${backups.length}.db`);
        await backUp(data, copy);
        backups.push(copy);
        store = openSqliteStore(file, { inThread: true });
      }
    }
    await store.close();
    for (let kill = 0; kill < kills; kill += 1) {
      const first = words + kill * wordsOfAProcess;
      await killed(folder, 'write', first, chances, forgotten);
      look(`after kill ${kill} of a writer`);
      await killed(folder, 'back-up', first, chances, forgotten);
      look(`after kill ${kill} of a backup`);
      // As the next server or backup does.
      const again = openSqliteStore(file, { inThread: true });
      for (const { tasting, seat } of forgotten.values())
        if (again.notebooks.read(tasting, seat).entries.length > 0)
          findings.push(`${seat} of ${tasting} was back after kill ${kill}`);
      await again.close();
      look(`after kill ${kill}, started again`);
    }
    await backUp(data, join(folder, 'backup-last.db'));
    backups.push(join(folder, 'backup-last.db'));
    const parts = filesIn(folder).filter((path) => path.includes('.part'));
    findings.push(...parts.map((path) => `${path} is left of a backup that was killed`));
    store = openSqliteStore(file, { inThread: true });
    const [doomed] = tastings;
    if (doomed !== undefined) await store.tastings.remove(doomed);
    look('at the end, in use');
    await store.close();
    look('at the end');
    for (const [index, copy] of backups.entries()) {
      await restore(data, copy, { now: new Date(index * 1000) });
      const back = openSqliteStore(file, { inThread: true });
      if (doomed !== undefined && back.tastings.find(doomed) !== undefined)
        findings.push('a deleted evening came back');
      for (const { tasting, seat } of forgotten.values()) {
        if (back.notebooks.read(tasting, seat).entries.length > 0)
          findings.push(`${seat} of ${tasting} came back`);
      }
      // A look that finds nothing might be a blind one: what nobody forgot must have come back.
      if (survivors(back, forgotten) === 0) findings.push('nothing at all came back');
      await back.close();
      look(`after backup ${index} was restored`);
    }
  } finally {
    await forgetFolder(folder);
  }
  return { words, forgotten: forgotten.size, deleted: 1, backups: backups.length, files, findings };
}

/** Beyond what one process writes before it is killed. */
const wordsOfAProcess = 100_000;

/** Lets a process of its own work on the store, and kills it at a random moment; what it has acknowledged is known. */
async function killed(
  folder: string,
  work: 'write' | 'back-up',
  first: number,
  chances: Chances,
  forgotten: Forgotten,
): Promise<void> {
  const seed = String(chances.below(1_000_000));
  const given = [folder, work, String(first), seed, JSON.stringify([...forgotten])];
  const child = fork(join(import.meta.dirname, 'worker.ts'), given, { execArgv: ['--import', 'tsx'] });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const begun = new Promise<void>((resolve, reject) => {
    child.once('exit', () => reject(new Error(`The process that was to ${work} fell by itself.`)));
    child.on('message', (said) => {
      const done = said as { readonly begun: true } | ReturnType<Forgotten['get']>;
      if (done !== undefined && 'tasting' in done) forgotten.set(`${done.tasting} ${done.seat}`, done);
      resolve();
    });
  });
  await begun;
  await new Promise((resolve) => setTimeout(resolve, chances.between(20, 400)));
  child.kill('SIGKILL');
  await ended;
}

function survivors(store: SqliteStore, forgotten: Forgotten): number {
  return tastings.slice(1).reduce(
    (sum, tasting) =>
      sum +
      Array.from({ length: guests }, (_, guest) => seatId(`seat-${guest}`))
        .filter((seat) => !forgotten.has(`${tasting} ${seat}`))
        .reduce((found, seat) => found + store.notebooks.read(tasting, seat).entries.length, 0),
    0,
  );
}

function filesIn(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesIn(path) : [path];
  });
}
