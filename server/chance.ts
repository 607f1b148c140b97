import { randomInt } from 'node:crypto';
import { customAlphabet, nanoid } from 'nanoid';
import { codeAlphabet, codeLengths } from './access/join-code.ts';

/** The one source of randomness of the server. Injected, so that tests can make two runs equal. */
export interface Chance {
  /** A name for a thing; not a secret. */
  id(): string;
  /** A secret of 192 bits. */
  key(): string;
  /** A join code of so many letters, not yet known to be free. */
  code(length: number): string;
  /** Two digits that a host reads off a screen across the room. */
  number(): number;
}

const randomCode = customAlphabet(codeAlphabet, codeLengths.home);

export const realChance: Chance = {
  id: () => nanoid(12),
  key: () => nanoid(32),
  code: (length) => randomCode(length),
  number: () => randomInt(10, 100),
};
