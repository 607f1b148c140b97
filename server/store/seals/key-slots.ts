import { createHmac } from 'node:crypto';
import { closeSync, constants, fstatSync, fsyncSync, openSync, readSync, writeSync } from 'node:fs';
import { boxOverhead } from './cipher.ts';

/**
 * Wrapped keys of notebooks in slots of equal length. They lie beside the store and not in it: a database moves its rows
 * about and leaves copies behind in pages it no longer uses, while a slot stays where it is and is written over when its
 * key is to be gone.
 */
export interface Slot {
  /** 16 bytes that stand for a tasting, 16 for a notebook in it. */
  readonly tasting: string;
  readonly notebook: string;
  /** 60 bytes. */
  readonly box: Buffer;
}

/** Where slots are kept. Each call is on disk when it returns. */
export interface SlotFile {
  /** Whatever is whole; `at` names the slot. */
  all(): (Slot & { readonly at: number })[];
  /** Answers with the name of the slot. */
  add(slot: Slot): number;
  /** Writes over it. */
  clear(at: readonly number[]): void;
  close(): void;
}

const tagBytes = 16;
const boxBytes = 32 + boxOverhead;
const slotBytes = 2 * tagBytes + boxBytes + 4;
const mark = Buffer.from('key\n');
const blank = Buffer.alloc(slotBytes);

export const tagOf = (key: Buffer, text: string): string =>
  createHmac('sha256', key).update(text, 'utf8').digest().subarray(0, tagBytes).toString('hex');

export const bytesOf = ({ tasting, notebook, box }: Slot): Buffer =>
  Buffer.concat([Buffer.from(tasting, 'hex'), Buffer.from(notebook, 'hex'), box, mark]);

/** Undefined for an empty slot, and for one that a power cut left half written. */
export function slotOf(bytes: Buffer): Slot | undefined {
  if (bytes.length !== slotBytes || !bytes.subarray(slotBytes - mark.length).equals(mark)) return undefined;
  return {
    tasting: bytes.subarray(0, tagBytes).toString('hex'),
    notebook: bytes.subarray(tagBytes, 2 * tagBytes).toString('hex'),
    box: Buffer.from(bytes.subarray(2 * tagBytes, 2 * tagBytes + boxBytes)),
  };
}

/** Opens or makes the file; only its owner may read it. */
export function slotsIn(path: string): SlotFile {
  const file = openSync(path, constants.O_RDWR | constants.O_CREAT, 0o600);
  const free: number[] = [];
  let end = Math.ceil(fstatSync(file).size / slotBytes);
  const put = (at: number, bytes: Buffer) => writeSync(file, bytes, 0, slotBytes, at * slotBytes);
  return {
    all() {
      const bytes = Buffer.alloc(end * slotBytes);
      readSync(file, bytes, 0, bytes.length, 0);
      free.length = 0;
      return Array.from({ length: end }, (_, at) => at).flatMap((at) => {
        const slot = slotOf(bytes.subarray(at * slotBytes, (at + 1) * slotBytes));
        if (slot === undefined) free.push(at);
        return slot === undefined ? [] : [{ ...slot, at }];
      });
    },
    add(slot) {
      const at = free.pop() ?? end;
      put(at, bytesOf(slot));
      fsyncSync(file);
      end = Math.max(end, at + 1);
      return at;
    },
    clear(slots) {
      if (slots.length === 0) return;
      for (const at of slots) put(at, blank);
      fsyncSync(file);
      free.push(...slots);
    },
    close: () => closeSync(file),
  };
}

/** The same without a file. */
export function slotsInMemory(): SlotFile {
  const slots = new Map<number, Slot>();
  let next = 0;
  return {
    all: () => [...slots].map(([at, slot]) => ({ ...slot, at })),
    add(slot) {
      slots.set(next, slot);
      return next++;
    },
    clear(at) {
      for (const each of at) slots.delete(each);
    },
    close: () => undefined,
  };
}
