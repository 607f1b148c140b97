import { z } from 'zod';
import type { PourId, SeatId } from '../../core/ids.ts';
import { pourId } from '../../core/ids.ts';
import { idSchema } from '../../core/tasting.ts';
import { cleanText } from '../../core/text.ts';
import { longestText, type NoteEntry, textFields } from '../notes/entry.ts';
import { commandIdSchema } from './commands.ts';

const aPour = idSchema.transform(pourId);

export const noteSaveSchema = z.strictObject({
  id: commandIdSchema,
  pour: aPour,
  field: z.enum(textFields),
  value: z.string().max(longestText).transform(cleanText),
  /** The revision from which this device began to write; 0 for a field that it has never seen saved. */
  base: z.number().int().min(0).max(1_000_000),
});
export type NoteSave = z.infer<typeof noteSaveSchema>;

/** Sharing is the guest's choice per pour, off until switched on, and can be withdrawn [Q2]. */
export const noteShareSchema = z.strictObject({ id: commandIdSchema, pour: aPour, shared: z.boolean() });
export type NoteShare = z.infer<typeof noteShareSchema>;

/** A guest's own notebook, to their own devices only. */
export interface NotebookView {
  readonly seat: SeatId;
  readonly entries: readonly NoteEntry[];
  readonly shared: readonly PourId[];
}
