import { bytesOf, type Slot, type SlotFile, slotsInMemory, tagOf } from '../seals/key-slots.ts';

/** The wrapped keys of the notebooks that are held here. A new one is committed with the first note that it seals. */
export interface HeldSlots {
  readonly file: SlotFile;
  /** Of a notebook whose key no commit has taken along yet. */
  unsaved(tasting: string, notebook: string): { readonly at: number; readonly bytes: Buffer } | undefined;
  saved(at: number): void;
  /** What is added meanwhile comes from the database. */
  whileLoading(load: () => void): void;
}

/** @param naming what the seals name their slots with */
export function heldSlots(naming: Buffer): HeldSlots {
  const inner = slotsInMemory();
  const fresh = new Map<string, { readonly at: number; readonly slot: Slot }>();
  let loading = false;
  return {
    file: {
      ...inner,
      add(slot) {
        const at = inner.add(slot);
        if (!loading) fresh.set(slot.notebook, { at, slot });
        return at;
      },
      clear(doomed) {
        for (const [notebook, { at }] of fresh) if (doomed.includes(at)) fresh.delete(notebook);
        return inner.clear(doomed);
      },
    },
    unsaved(tasting, notebook) {
      const found = fresh.get(tagOf(naming, `${tasting} ${notebook}`));
      return found && { at: found.at, bytes: bytesOf(found.slot) };
    },
    saved(at) {
      for (const [notebook, each] of fresh) if (each.at === at) fresh.delete(notebook);
    },
    whileLoading(load) {
      loading = true;
      try {
        load();
      } finally {
        loading = false;
      }
    },
  };
}
