import { mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { commandId, pourId, type SeatId, seatId, tastingId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { backUp } from '../../../server/ops/backup.ts';
import { restore } from '../../../server/ops/restore.ts';
import { openSqliteStore, type SqliteStore } from '../../../server/store/sqlite.ts';
import { planOf } from '../../support/plans.ts';
import { forgetFolder, temporaryFolder } from '../../support/server.ts';
import { Chances } from '../chances.ts';
import { canariesIn, canary } from '../secrets/canary.ts';

export interface ResidueOptions {
  /** How many words are written in all. */
  readonly words: number;
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

const fields = ['look', 'nose', 'palate', 'finish', 'thoughts'] as const;
const tastings = ['harvest', 'winter', 'spring'].map(tastingId);
const guests = 16;
const pours = ['one', 'two', 'three'].map(pourId);

/**
 * Writes words, writes over them, forgets guests, deletes an evening, and makes backups in between; then looks for any word
 * in every byte of every file, and for those that were forgotten in what an older backup brings back. What a kill leaves is
 * looked at too: the files are read while they are in use.
 */
export async function seekResidue({ words, seed }: ResidueOptions): Promise<Residue> {
  const chances = new Chances(seed);
  const folder = await temporaryFolder();
  const data = join(folder, 'data');
  mkdirSync(data);
  const file = join(data, 'quietpour.db');
  const findings: string[] = [];
  const forgotten = new Map<string, { readonly tasting: (typeof tastings)[number]; readonly seat: SeatId }>();
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
    let store = openSqliteStore(file);
    for (const [index, tasting] of tastings.entries()) {
      const code = `ABC23${index}`;
      await store.tastings.create({ tasting, code, plan: planOf(3), revision: 1, createdAt: epochMs(0) });
    }
    const revisions = new Map<string, number>();
    for (let word = 0; word < words; word += 1) {
      await write(store, word, chances, revisions, forgotten);
      if (chances.happens(0.02)) {
        const tasting = chances.anyOf(tastings.slice(1)) ?? tastings[1];
        const seat = seatId(`seat-${chances.below(guests)}`);
        if (tasting !== undefined) {
          await store.notebooks.forget(tasting, seat);
          forgotten.set(`${tasting} ${seat}`, { tasting, seat });
        }
      }
      if (backups.length < 4 && word === Math.floor(((backups.length + 1) * words) / 5)) {
        look('while in use');
        await store.close();
        const copy = join(folder, `backup-${backups.length}.db`);
        await backUp(data, copy);
        backups.push(copy);
        store = openSqliteStore(file);
      }
    }
    const [doomed] = tastings;
    if (doomed !== undefined) await store.tastings.remove(doomed);
    look('at the end, in use');
    await store.close();
    look('at the end');
    for (const [index, copy] of backups.entries()) {
      await restore(data, copy, { now: new Date(index * 1000) });
      const back = openSqliteStore(file);
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

async function write(
  store: SqliteStore,
  word: number,
  chances: Chances,
  revisions: Map<string, number>,
  forgotten: ReadonlyMap<string, unknown>,
): Promise<void> {
  const tasting = chances.anyOf(tastings) ?? tastingId('harvest');
  const seat = seatId(`seat-${chances.below(guests)}`);
  // Who has asked to be forgotten has no key to write with.
  if (forgotten.has(`${tasting} ${seat}`)) return;
  const pour = chances.anyOf(pours) ?? pourId('one');
  const field = chances.anyOf(fields) ?? 'nose';
  const place = `${tasting} ${seat} ${pour} ${field}`;
  const revision = (revisions.get(place) ?? 0) + 1;
  revisions.set(place, revision);
  const value = `${canary(word).text} ${'and more '.repeat(chances.below(40))}`;
  const savedAt = epochMs(word);
  const entry = { pour, field, value, revision, savedAt, ...(revision > 1 ? { sealedValue: value } : {}) };
  const answer = { ok: true, revision, value, savedAt } as const;
  const answered = { command: commandId(`word-${String(word).padStart(6, '0')}`), answer };
  await store.notebooks.save({ tasting, seat, entry, answered });
}

function survivors(store: SqliteStore, forgotten: ReadonlyMap<string, unknown>): number {
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
