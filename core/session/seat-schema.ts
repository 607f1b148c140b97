import { z } from 'zod';
import { type PourId, seatId } from '../ids.ts';
import { idSchema, pourIdSchema } from '../tasting.ts';
import { epochMs } from '../units.ts';

export const seatIdSchema = idSchema.transform(seatId);

export const kitItemSchema = z.enum(['vials', 'lids', 'water', 'spit-cup', 'white-paper']);
export type KitItem = z.infer<typeof kitItemSchema>;

export const seatSchema = z.object({
  id: seatIdSchema,
  name: z.string(),
  leftHanded: z.boolean(),
  remote: z.boolean(),
  /** `waiting`: at the door, until the host lets them in. `left` and `removed` keep their notes. */
  presence: z.enum(['seated', 'waiting', 'left', 'removed']),
  /** [C5] */
  cautionsRead: z.boolean(),
  groundRulesAccepted: z.boolean(),
  /** [C4] The host pours this guest no more alcohol. */
  onlyWater: z.boolean(),
  takenAt: z.number().transform(epochMs),
  /** Counts the seats as they were taken, from 0; chooses the row of the serving orders. */
  row: z.number().int().min(0),
  /** What a remote guest has found in their kit and laid ready. */
  kit: z.array(kitItemSchema) as z.ZodType<readonly KitItem[]>,
  /** Pours that the room had behind it when this seat was taken, and that nobody has ticked off as caught up [F3]. */
  missed: z.array(pourIdSchema) as z.ZodType<readonly PourId[]>,
});
export type Seat = z.infer<typeof seatSchema>;
