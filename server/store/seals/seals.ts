import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { PourId, SeatId, TastingId } from '../../../core/ids.ts';
import { type Forgotten, notesAmong } from '../forgettings.ts';
import { openBox, sealBox } from './cipher.ts';
import {
  bytesOf,
  type Slot,
  type SlotFile,
  type SlotWriting,
  slotOf,
  slotsIn,
  slotsInMemory,
  tagOf,
} from './key-slots.ts';
import { freshMaster, type MasterKey, masterKeyFrom, masterKeyIn } from './master-key.ts';

/** Where a box belongs. It opens nowhere else. */
interface Place {
  readonly tasting: TastingId;
  /** A seat, or the notebook of a device that has not been let in; see `asideOf`. */
  readonly notebook: SeatId;
  readonly pour: PourId;
  readonly field: string;
  readonly column: 'value' | 'sealed_value';
}

/**
 * Seals what guests write: each notebook has a key of its own, kept wrapped by the server's, and once that key is written
 * over nobody reads the notebook again, wherever a copy of its bytes still lies.
 */
export interface Seals {
  readonly master: MasterKey;
  /** Makes the notebook's key with its first box. */
  seal(place: Place, text: string): Buffer;
  /** Undefined when its key is gone or the bytes are not what was written. */
  open(place: Place, box: Uint8Array): string | undefined;
  /** Whether this notebook has a key that opens; one that has notes and none has lost them to the disk. */
  holds(tasting: TastingId, notebook: SeatId): boolean;
  /** Opens nothing any more from now on; written over on disk when it is done. */
  destroy(tasting: TastingId, notebook: SeatId): Promise<void>;
  destroyAll(tasting: TastingId): Promise<void>;
  /** Destroys the keys that no notebook of these uses, such as one whose forgetting a power cut broke off. */
  destroyUnused(used: readonly { readonly tasting: string; readonly notebook: string }[]): Promise<void>;
  /** For a backup: as they lie, wrapped. */
  slots(): Buffer[];
  /**
   * From a backup, but for what has been forgotten since; those that are there already stay as they are. Throws a sentence
   * when they were wrapped by another server's key.
   */
  take(slots: readonly Uint8Array[], forgotten: readonly Forgotten[]): void;
  close(): void;
}

/** The key of the notes, beside the store: it is not in a backup. */
export const masterFileOf = (store: string): string => join(dirname(store), 'notes.key');
export const slotFileOf = (store: string): string => `${store}.keys`;

/** Throws a sentence when the key does not fit. */
export function sealsBeside(store: string, writing?: SlotWriting): Seals {
  const slotFile = slotFileOf(store);
  const had = existsSync(slotFile);
  const slots = slotsIn(slotFile, writing);
  try {
    const mayBeNew = !had || slots.all().length === 0;
    const master = masterKeyFrom(masterKeyIn(masterFileOf(store), mayBeNew));
    return sealsWith(master, slots);
  } catch (error) {
    slots.close();
    throw error;
  }
}

export const sealsInMemory = (): Seals => sealsWith(masterKeyFrom(freshMaster()), slotsInMemory());

const misfit = 'The notes in the store were sealed with another notes.key: put the right file back.';

/** Whether this key wrapped it. */
export const fits = ({ wrapping }: MasterKey, slot: Slot): boolean =>
  openBox(wrapping, slot.box, aboutOf(slot)) !== undefined;

const aboutOf = ({ tasting, notebook }: Pick<Slot, 'tasting' | 'notebook'>): string =>
  `key ${tasting} ${notebook}`;

const mostTags = 5000;

interface Kept {
  readonly at: number;
  readonly slot: Slot;
  /** As soon as it was needed. */
  key?: Buffer | undefined;
}

export function sealsWith(master: MasterKey, file: SlotFile): Seals {
  const { wrapping, naming } = master;
  const kept = new Map<string, Kept>();
  const nameOf = ({ tasting, notebook }: Pick<Slot, 'tasting' | 'notebook'>) => `${tasting} ${notebook}`;
  const keep = (at: number, slot: Slot, key?: Buffer): void => void kept.set(nameOf(slot), { at, slot, key });
  for (const { at, ...slot } of file.all()) keep(at, slot);
  // One that a disk has harmed does not fit either, and is one notebook's trouble.
  if (kept.size > 0 && ![...kept.values()].some(({ slot }) => fits(master, slot))) throw new Error(misfit);

  // A board reads thousands of boxes of a few notebooks.
  const tags = new Map<string, Pick<Slot, 'tasting' | 'notebook'>>();
  const tagsOf = (tasting: string, notebook: string) => {
    const whole = `${tasting} ${notebook}`;
    const known = tags.get(whole) ?? { tasting: tagOf(naming, tasting), notebook: tagOf(naming, whole) };
    if (tags.size >= mostTags) tags.clear();
    tags.set(whole, known);
    return known;
  };
  const keyOf = (tasting: string, notebook: string): Buffer | undefined => {
    const found = kept.get(nameOf(tagsOf(tasting, notebook)));
    if (found === undefined) return undefined;
    found.key ??= openBox(wrapping, found.slot.box, aboutOf(found.slot));
    return found.key;
  };
  const newKey = (tasting: string, notebook: string): Buffer => {
    const named = tagsOf(tasting, notebook);
    const key = randomBytes(32);
    const slot = { ...named, box: sealBox(wrapping, key, aboutOf(named)) };
    keep(file.add(slot), slot, key);
    return key;
  };
  const destroy = (doomed: readonly Kept[]): Promise<void> => {
    const cleared = file.clear(doomed.map(({ at }) => at));
    for (const { slot, key } of doomed) {
      key?.fill(0);
      kept.delete(nameOf(slot));
    }
    return cleared;
  };

  return {
    master,
    seal(place, text) {
      const key = keyOf(place.tasting, place.notebook) ?? newKey(place.tasting, place.notebook);
      return sealBox(key, Buffer.from(text, 'utf8'), placeOf(place));
    },
    open(place, box) {
      const key = keyOf(place.tasting, place.notebook);
      return key === undefined ? undefined : openBox(key, box, placeOf(place))?.toString('utf8');
    },
    holds: (tasting, notebook) => keyOf(tasting, notebook) !== undefined,
    destroy(tasting, notebook) {
      const found = kept.get(nameOf(tagsOf(tasting, notebook)));
      return destroy(found === undefined ? [] : [found]);
    },
    destroyAll(tasting) {
      const tag = tagOf(naming, tasting);
      return destroy([...kept.values()].filter(({ slot }) => slot.tasting === tag));
    },
    destroyUnused(used) {
      const names = new Set(used.map(({ tasting, notebook }) => nameOf(tagsOf(tasting, notebook))));
      return destroy([...kept].flatMap(([name, each]) => (names.has(name) ? [] : [each])));
    },
    slots: () => [...kept.values()].map(({ slot }) => bytesOf(slot)),
    take(slots, all) {
      const forgotten = notesAmong(all);
      const whole = new Set(
        forgotten.flatMap((each) => (each.seat === null ? tagsOf(each.tasting, '').tasting : [])),
      );
      const seats = new Set(
        forgotten.flatMap(({ tasting, seat }) => (seat === null ? [] : nameOf(tagsOf(tasting, seat)))),
      );
      const read = slots.flatMap((bytes) => slotOf(Buffer.from(bytes)) ?? []);
      const fitting = read.filter((slot) => fits(master, slot));
      if (read.length > 0 && fitting.length === 0) throw new Error(misfit);
      for (const slot of fitting) {
        if (whole.has(slot.tasting) || seats.has(nameOf(slot)) || kept.has(nameOf(slot))) continue;
        keep(file.add(slot), slot);
      }
    },
    close: () => file.close(),
  };
}

const placeOf = ({ tasting, notebook, pour, field, column }: Place): string =>
  ['note', tasting, notebook, pour, field, column].join('\n');
