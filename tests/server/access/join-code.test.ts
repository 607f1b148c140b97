import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tastingId } from '../../../core/ids.ts';
import { codeAlphabet, codeLengths, passOf, readCode } from '../../../server/access/join-code.ts';
import { realChance } from '../../../server/chance.ts';

const passLength = 27;
/** Typed at home, typed elsewhere, and as the links of both carry them. */
const lengths = [6, 9, 6 + passLength, 9 + passLength];
const aCode = () =>
  fc
    .constantFrom(...lengths)
    .chain((length) => fc.array(fc.constantFrom(...codeAlphabet), { minLength: length, maxLength: length }))
    .map((letters) => letters.join(''));
const whole = (typed: string): string | undefined => {
  const read = readCode(typed);
  return read && read.code + (read.pass ?? '');
};

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
        expect(whole(typed.join(''))).toBe(right);
      }),
    );
  });

  it('are six of 29 characters at home and nine elsewhere; a link carries 131 bits more', () => {
    expect(new Set(codeAlphabet).size).toBe(codeAlphabet.length);
    expect(Math.round(codeAlphabet.length ** codeLengths.home / 1e6)).toBe(595);
    expect((codeAlphabet.length ** codeLengths.elsewhere / 1e13).toFixed(2)).toBe('1.45');
    const pass = passOf(tastingId('harvest'), 'house-key');
    expect(Math.floor(pass.length * Math.log2(codeAlphabet.length))).toBe(131);
    expect(readCode(`ABC234${pass}`)).toEqual({ code: 'A8C234', pass });
    expect(readCode(`AVC234XY9${pass}`)).toEqual({ code: 'AVC234XY9', pass });
    expect(passOf(tastingId('harvest'), 'house-key')).toBe(pass);
    expect(passOf(tastingId('harvest'), 'another-key')).not.toBe(pass);
    expect(passOf(tastingId('spring'), 'house-key')).not.toBe(pass);
  });

  it('have one member of every set that looks alike', () => {
    for (const others of Object.values(lookAlikes)) {
      for (const other of others) if (other !== 'v') expect(codeAlphabet).not.toContain(other);
    }
  });

  it('are refused when they have another length, or characters that are not ours', () => {
    for (const typed of [
      '',
      'AAAAA',
      'AAAAAAA',
      'AAAAAAAAAA',
      'A'.repeat(34),
      'AAAAA!',
      'ÄAAAAA',
      '__proto__',
      '\u{1F377}AAAA',
    ]) {
      expect(readCode(typed)).toBeUndefined();
    }
  });

  it('are made of that alphabet, and keys have 128 bits or more', () => {
    for (let count = 0; count < 100; count += 1) {
      const made = realChance.code(count % 2 === 0 ? codeLengths.home : codeLengths.elsewhere);
      expect(readCode(made)).toEqual({ code: made, pass: undefined });
      // 6 bits for each character of an alphabet of 64.
      expect(realChance.key()).toMatch(/^[A-Za-z0-9_-]{22,}$/);
    }
  });
});
