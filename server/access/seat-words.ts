import { createHmac, randomBytes, randomInt, scrypt, timingSafeEqual } from 'node:crypto';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { fold } from '../../shared/words/fold.ts';
import type { SeatWords } from '../store/store.ts';
import { germanWords } from './words/de.ts';
import { englishWords } from './words/en.ts';

/**
 * The four words by which a guest is known when no device of theirs is left.
 *
 * The arithmetic: of 400 words four make 400^4, 2.6 thousand million. A seat takes five wrong tries, and one more each
 * hour: in a month fewer than 730, one chance in 3.5 million for whoever guesses all the time at one seat, and one in
 * 17,000 of finding any of 200. Nobody guesses without a device that sits in the seat, which its guest is told of. Whoever
 * has stolen the store has nothing to try them on: they are mixed with a part of the server's key before they are hashed.
 */
const wordCount = 4;
const freeTries = 5;
const anotherAfter = 3_600_000;

/** scrypt (RFC 7914) with 16 MiB and a few hundredths of a second for each try. */
const cost = { N: 2 ** 14, r: 8, p: 1, maxmem: 64 * 2 ** 20 };
const hashBytes = 32;

/** In the language of the page that asks, where there is a list of it. */
export const drawWords = (language: string): string[] => {
  const list = language === 'de' ? germanWords : englishWords;
  return Array.from({ length: wordCount }, () => list[randomInt(list.length)] ?? '');
};

export async function hashWords(words: string, pepper: Buffer): Promise<Pick<SeatWords, 'salt' | 'hash'>> {
  const salt = randomBytes(16);
  return { salt, hash: await slowHash(words, salt, pepper) };
}

export async function areWords(said: string, kept: SeatWords, pepper: Buffer): Promise<boolean> {
  return timingSafeEqual(await slowHash(said, kept.salt, pepper), kept.hash);
}

/** Wrong tries that still count at this moment: each is forgiven an hour after the one before it was. */
export function standingTries(wrong: readonly EpochMs[], now: EpochMs): EpochMs[] {
  const first = wrong[0];
  if (first === undefined) return [];
  // A clock that was set back forgives nothing early.
  const forgiven = Math.max(0, Math.floor((now - first) / anotherAfter));
  return wrong.slice(forgiven).map((_, index) => epochMs(first + (forgiven + index) * anotherAfter));
}

export interface Tries {
  readonly left: number;
  /** When there is one more; null while all are left. */
  readonly moreAt: EpochMs | null;
}

export function triesLeft(wrong: readonly EpochMs[], now: EpochMs): Tries {
  const standing = standingTries(wrong, now);
  const [first] = standing;
  return {
    left: Math.max(0, freeTries - standing.length),
    moreAt: first === undefined ? null : epochMs(first + anotherAfter),
  };
}

/** One after the other: a roomful that sits down at once must not take every thread of the process. */
let queue: Promise<unknown> = Promise.resolve();

function slowHash(words: string, salt: Buffer, pepper: Buffer): Promise<Buffer> {
  // As people type them: capitals, commas and dashes do not matter.
  const tidy = fold(words);
  const mixed = createHmac('sha256', pepper).update(tidy, 'utf8').digest();
  const hashed = queue.then(
    () =>
      new Promise<Buffer>((resolve, reject) => {
        scrypt(mixed, salt, hashBytes, cost, (error, hash) => {
          if (error === null) resolve(hash);
          else reject(error);
        });
      }),
  );
  queue = hashed.catch(() => undefined);
  return hashed;
}
