import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const folder = 'tests/pictures';
const pictures = readdirSync(join(root, folder));

describe('the pictures of README', () => {
  it('are kept beside the code because they are small', () => {
    for (const picture of pictures)
      expect(statSync(join(root, folder, picture)).size, picture).toBeLessThan(60_000);
  });

  it('are all shown, each with words for who does not see it, and none is missing', () => {
    const shown = [...readme.matchAll(/!\[([^\]]*)\]\(([^)]+)\)/g)];
    for (const [, words = ''] of shown) expect(words.length).toBeGreaterThan(20);
    const addresses = shown.map(([, , address]) => address);
    expect(addresses.sort()).toEqual(pictures.map((picture) => `${folder}/${picture}`).sort());
  });

  it('and every other file that it links to is there', () => {
    const linked = [...readme.matchAll(/(?<!!)\[[^\]]*\]\((?!https?:)([^)#]+)/g)].map(
      ([, address]) => address ?? '',
    );
    expect(linked.length).toBeGreaterThan(2);
    for (const address of linked) expect(statSync(join(root, address)).isFile(), address).toBe(true);
  });
});
