import { createCipheriv, createDecipheriv, randomFillSync } from 'node:crypto';

/** AES-256-GCM (NIST SP 800-38D): a fresh nonce of 96 bits for each box, and a tag of 128 bits. */
const algorithm = 'aes-256-gcm';
const nonceBytes = 12;
const tagBytes = 16;

/** Bytes that a box is longer than what is in it. */
export const boxOverhead = nonceBytes + tagBytes;

/** Chance is asked for many nonces at once, which costs as much as asking for one. No byte of it is used twice. */
const drawn = Buffer.alloc(nonceBytes * 256);
let used = drawn.length;

function freshNonce(): Buffer {
  if (used === drawn.length) {
    randomFillSync(drawn);
    used = 0;
  }
  used += nonceBytes;
  return drawn.subarray(used - nonceBytes, used);
}

/**
 * Nonce, cipher text, tag. `about` is bound to it and not in it: a box that is put somewhere else does not open.
 *
 * @param key 32 bytes
 */
export function sealBox(key: Buffer, plain: Buffer, about: string): Buffer {
  const nonce = freshNonce();
  const cipher = createCipheriv(algorithm, key, nonce, { authTagLength: tagBytes });
  cipher.setAAD(Buffer.from(about, 'utf8'));
  return Buffer.concat([nonce, cipher.update(plain), cipher.final(), cipher.getAuthTag()]);
}

/** Undefined when the box was made with another key, for another place, or is damaged. */
export function openBox(key: Buffer, box: Uint8Array, about: string): Buffer | undefined {
  if (box.length < boxOverhead) return undefined;
  const decipher = createDecipheriv(algorithm, key, box.subarray(0, nonceBytes), { authTagLength: tagBytes });
  decipher.setAAD(Buffer.from(about, 'utf8'));
  decipher.setAuthTag(box.subarray(box.length - tagBytes));
  try {
    const plain = decipher.update(box.subarray(nonceBytes, box.length - tagBytes));
    return Buffer.concat([plain, decipher.final()]);
  } catch {
    return undefined;
  }
}
