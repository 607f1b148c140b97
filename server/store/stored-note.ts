import type { NoteField, NoteValue } from '../../shared/notes/entry.ts';
import { noteSaveSchema } from '../../shared/wire/notebook.ts';

/** What may stand in each field of a notebook, as it was let in at the door. */
export const storedNoteSchemas: ReadonlyMap<
  string,
  (typeof noteSaveSchema.options)[number]['shape']['value']
> = new Map(noteSaveSchema.options.map(({ shape }) => [shape.field.value, shape.value]));

export interface StoredNote {
  readonly field: NoteField;
  readonly value: NoteValue;
  /** As it stood when the discussion was opened [Q3]; absent where nothing was written since. */
  readonly sealedValue?: NoteValue;
}

/**
 * A field of a notebook as it lies in the store, already unsealed; undefined when it cannot be read. Where only what was
 * sealed cannot be read nothing is: the words of later must never be taken for those of before [Q3].
 */
export function noteIn(field: string, value: string, sealedValue: string | null): StoredNote | undefined {
  const read = readerOf(field);
  const now = read?.(value);
  const sealed = sealedValue === null ? undefined : read?.(sealedValue);
  if (now === undefined || (sealedValue !== null && sealed === undefined)) return undefined;
  // The map is made of the fields of the notebook.
  return { field: field as NoteField, value: now, ...(sealed === undefined ? {} : { sealedValue: sealed }) };
}

function readerOf(field: string): ((text: string) => NoteValue | undefined) | undefined {
  const schema = storedNoteSchemas.get(field);
  if (schema === undefined) return undefined;
  return (text) => {
    try {
      return schema.safeParse(JSON.parse(text)).data;
    } catch {
      return undefined;
    }
  };
}
