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

/** Where slots are kept. */
export interface SlotFile {
  /** Whatever is whole; `at` names the slot. */
  all(): (Slot & { readonly at: number })[];
  /** Answers with the name of the slot. On disk before whatever is committed next. */
  add(slot: Slot): number;
  /** Writes over them, and over all whose clearing has failed before. On disk when it is done. */
  clear(at: readonly number[]): Promise<void>;
  close(): void;
}

/** Who brings the bytes to disk. */
export interface SlotWriting {
  /** @param at the place, counted in slots */
  put(at: number, bytes: Buffer): void;
  /** When all of it is on disk. */
  saved(): Promise<void>;
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

/**
 * Opens or makes the file; only its owner may read it.
 *
 * @param writing absent: this thread writes, and each call is on disk when it returns
 */
export function slotsIn(path: string, writing?: SlotWriting): SlotFile {
  const file = openSync(path, constants.O_RDWR | constants.O_CREAT, 0o600);
  const free: number[] = [];
  const doomed: number[] = [];
  let end = Math.ceil(fstatSync(file).size / slotBytes);
  const put = (slots: readonly number[], bytes: Buffer): void => {
    for (const at of slots)
      if (writing === undefined) writeSync(file, bytes, 0, slotBytes, at * slotBytes);
      else writing.put(at, bytes);
    if (writing === undefined) fsyncSync(file);
  };
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
      put([at], bytesOf(slot));
      end = Math.max(end, at + 1);
      return at;
    },
    clear(slots) {
      doomed.push(...slots);
      if (doomed.length > 0) put(doomed, blank);
      free.push(...doomed.splice(0));
      return writing?.saved() ?? Promise.resolve();
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
    async clear(at) {
      for (const each of at) slots.delete(each);
    },
    close: () => undefined,
  };
}
