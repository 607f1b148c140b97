import { z } from 'zod';
import { commandId } from '../../core/ids.ts';
import type { Pouring } from '../../core/planning/serving/pouring.ts';
import { pourIdSchema } from '../../core/tasting.ts';

/** The pour run as it lies among the documents of a tasting. */
export const storedPouringSchema = z.object({
  settled: z.array(z.object({ pour: pourIdSchema, done: z.array(z.number().int().min(0)) })),
  recent: z.array(
    z.object({
      id: z.string().transform(commandId),
      places: z.array(z.number().int().min(1)),
      pours: z.array(pourIdSchema),
      done: z.number().int().min(0),
      undone: z.boolean(),
    }),
  ),
}) satisfies z.ZodType<Pouring>;
