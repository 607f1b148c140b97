import { chmodSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { houseKeyIn } from '../../../server/access/house-key.ts';
import { type Chance, realChance } from '../../../server/chance.ts';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'house-'));
  file = join(folder, 'house.key');
});
afterEach(() => rmSync(folder, { recursive: true }));

const mode = () => statSync(file).mode & 0o777;

describe('the key of the house', () => {
  it('is made at first start, in a file for its owner alone, and stays', () => {
    const key = houseKeyIn(folder, realChance);
    expect(key).toMatch(/^[A-Za-z0-9_-]{32}$/);
    expect(readFileSync(file, 'utf8')).toBe(`${key}\n`);
    expect(mode()).toBe(0o600);
    expect(houseKeyIn(folder, realChance)).toBe(key);
  });

  it('is closed to others again where somebody opened the file', () => {
    const key = houseKeyIn(folder, realChance);
    chmodSync(file, 0o644);
    expect(houseKeyIn(folder, realChance)).toBe(key);
    expect(mode()).toBe(0o600);
  });

  it.each([32, 128])('may have been put there by hand: %i characters', (length) => {
    writeFileSync(file, ` ${'k'.repeat(length)}\n`);
    expect(houseKeyIn(folder, realChance)).toBe('k'.repeat(length));
  });

  it.each([
    ['is empty', ''],
    ['is short', 'k'.repeat(31)],
    ['is long', 'k'.repeat(129)],
    ['begins with another character', `!${'k'.repeat(32)}`],
    ['ends with another character', `${'k'.repeat(32)}!`],
    ['holds two lines', `${'k'.repeat(32)}\n${'k'.repeat(32)}`],
  ])('is not guessed from a file that %s: it says which file, and what to do', (_, text) => {
    writeFileSync(file, text);
    const sentence = `${file} does not hold a key; delete the file and start again to get a new one.`;
    expect(() => houseKeyIn(folder, realChance)).toThrow(sentence);
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  it('is not made in a folder that is not there', () => {
    expect(() => houseKeyIn(join(folder, 'nowhere'), realChance)).toThrow(/ENOENT.*open/);
  });

  it('does not take another failure for a key that is there already', () => {
    writeFileSync(file, 'k'.repeat(32));
    const failing = (error: Error): Chance => ({
      ...realChance,
      key: () => {
        throw error;
      },
    });
    expect(() => houseKeyIn(folder, failing(new Error('no chance')))).toThrow('no chance');
    const busy = Object.assign(new Error('no file left'), { code: 'EMFILE' });
    expect(() => houseKeyIn(folder, failing(busy))).toThrow('no file left');
  });
});
