import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The key of whoever runs this server, made at first start and kept where only that person can read it. It is the
 * one secret that is stored as it is, for the host's address is printed with it at every start.
 */
export function houseKeyIn(folder: string, chance: { key(): string }): string {
  const file = join(folder, 'house.key');
  try {
    writeFileSync(file, `${chance.key()}\n`, { mode: 0o600, flag: 'wx' });
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    chmodSync(file, 0o600);
  }
  const key = readFileSync(file, 'utf8').trim();
  if (!/^[A-Za-z0-9_-]{32,128}$/.test(key)) {
    throw new Error(`${file} does not hold a key; delete the file and start again to get a new one.`);
  }
  return key;
}
