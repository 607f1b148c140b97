import type { Forgotten } from '../forgettings.ts';
import type { Row } from '../row-changes.ts';

/** Bytes for a place in the file of keys. */
export type SlotWrite = readonly [at: number, bytes: Uint8Array];

/** What the thread that writes is asked to do. Each is on disk when it is answered, or nothing of it is. */
export type Task =
  | {
      readonly do: 'commit';
      /** Written first: a note is never on disk without the key that opens it. */
      readonly slots: readonly SlotWrite[];
      readonly changes: readonly { readonly table: string; readonly kind: string; readonly row: Row }[];
    }
  | { readonly do: 'forget'; readonly forgotten: Forgotten }
  /** Folds the write-ahead log in, and cuts it off. */
  | { readonly do: 'cut' }
  /** Writes all of the store into a new file, while commits go on. */
  | { readonly do: 'copy'; readonly to: string }
  | { readonly do: 'pack'; readonly copy: string; readonly slots: readonly Uint8Array[] }
  | { readonly do: 'close' };

export interface Asked {
  readonly id: number;
  readonly task: Task;
}

/** Of an error only what is no value that was to be written. */
export interface Done {
  readonly id: number;
  readonly failed?: { readonly code: string | undefined; readonly message: string };
}

export interface ThreadGiven {
  readonly file: string;
  readonly slots: string;
  readonly forgotten: string;
  readonly pages: number | undefined;
}
