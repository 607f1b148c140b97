import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeAlphabet, codeLength, normaliseCode } from '../../../server/access/join-code.ts';
import { realChance } from '../../../server/chance.ts';

const aCode = () =>
  fc
    .array(fc.constantFrom(...codeAlphabet), { minLength: codeLength, maxLength: codeLength })
    .map((letters) => letters.join(''));

const lookAlikes: Record<string, readonly string[]> = {
  '0': ['O', 'o'],
  '1': ['I', 'i', 'L', 'l'],
  '2': ['Z', 'z'],
  '5': ['S', 's'],
  '8': ['B', 'b'],
  V: ['U', 'u', 'v'],
};

describe('join codes', () => {
  it('are read in any case, with spaces and dashes, and with every look-alike', () => {
    fc.assert(
      fc.property(aCode(), fc.infiniteStream(fc.nat({ max: 5 })), (right, choices) => {
        const typed = [...right].map((letter) => {
          const ways = [letter, letter.toLowerCase(), ...(lookAlikes[letter] ?? [])];
          const gap = ['', ' ', '-', '–', '\u00a0', ''][choices.next().value] ?? '';
          return (ways[choices.next().value % ways.length] ?? letter) + gap;
        });
        expect(normaliseCode(typed.join(''))).toBe(right);
      }),
    );
  });

  it('are six of 29 characters, so that there are 595 million', () => {
    expect(new Set(codeAlphabet).size).toBe(codeAlphabet.length);
    expect(Math.round(codeAlphabet.length ** codeLength / 1e6)).toBe(595);
  });

  it('have one member of every set that looks alike', () => {
    for (const others of Object.values(lookAlikes)) {
      for (const other of others) if (other !== 'v') expect(codeAlphabet).not.toContain(other);
    }
  });

  it('are refused when they are not six characters of ours', () => {
    for (const typed of ['', 'AAAAA', 'AAAAAAA', 'AAAAA!', 'ÄAAAAA', '__proto__', '\u{1F377}AAAA']) {
      expect(normaliseCode(typed)).toBeUndefined();
    }
  });

  it('are made of that alphabet, and keys have 128 bits or more', () => {
    for (let count = 0; count < 100; count += 1) {
      const made = realChance.code();
      expect(normaliseCode(made)).toBe(made);
      // 6 bits for each character of an alphabet of 64.
      expect(realChance.key()).toMatch(/^[A-Za-z0-9_-]{22,}$/);
    }
  });
});
