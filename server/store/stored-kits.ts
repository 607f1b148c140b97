import { z } from 'zod';
import { epochMs } from '../../core/units.ts';
import type { KitTry } from '../../shared/wire/kit-try.ts';

const deviceTry = ['works', 'refused', 'none', 'taken'] as const;

/** The same at the door and in the store. */
export const kitTrySchema = z.strictObject({
  camera: z.enum(deviceTry).exactOptional(),
  microphone: z.enum([...deviceTry, 'silent']).exactOptional(),
  loudspeaker: z.enum(['works', 'silent']).exactOptional(),
  line: z.enum(['works', 'voice', 'slow', 'gone']).exactOptional(),
}) satisfies z.ZodType<KitTry>;

/** What guests at home told of their kits, as it lies among the documents of a tasting; the latest last. */
export const storedKitsSchema = z.array(
  z.object({
    id: z.string(),
    name: z.string(),
    tried: kitTrySchema,
    at: z.number().transform(epochMs),
  }),
);
