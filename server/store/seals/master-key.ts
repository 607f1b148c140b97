import { hkdfSync, randomBytes } from 'node:crypto';
import { chmodSync, closeSync, fsyncSync, openSync, readFileSync, writeSync } from 'node:fs';

/** What the server's one key of notes is split into, by HKDF (RFC 5869) with a name for each use. */
export interface MasterKey {
  /** Wraps the keys of the notebooks. */
  readonly wrapping: Buffer;
  /** Names their places, so that a file of keys does not say whose they are. */
  readonly naming: Buffer;
  /** Is mixed into the guests' four words before they are hashed: the store alone is nothing to guess them by. */
  readonly pepper: Buffer;
}

export const freshMaster = (): Buffer => randomBytes(32);

export function masterKeyFrom(secret: Buffer): MasterKey {
  const part = (name: string) =>
    Buffer.from(hkdfSync('sha256', secret, Buffer.alloc(0), `quietpour ${name}`, 32));
  return { wrapping: part('wrapping'), naming: part('naming'), pepper: part('words') };
}

/**
 * The key of this file, made and on disk when there is none. Only its owner may read it. Throws a sentence when the file
 * holds something else, or when there must be one and is not.
 */
export function masterKeyIn(file: string, mayBeNew: boolean): Buffer {
  const found = readText(file);
  if (found === undefined) {
    if (!mayBeNew) {
      throw new Error(
        `The notes in the store are sealed, and ${file} is gone: put the file back from where you keep a copy of it.`,
      );
    }
    const secret = freshMaster();
    const written = openSync(file, 'wx', 0o600);
    writeSync(written, `${secret.toString('base64url')}\n`);
    fsyncSync(written);
    closeSync(written);
    return secret;
  }
  chmodSync(file, 0o600);
  const secret = Buffer.from(found.trim(), 'base64url');
  if (secret.length === 32) return secret;
  throw new Error(
    `${file} does not hold the key of the notes: put the file back from where you keep a copy.`,
  );
}

function readText(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}
