import { z } from 'zod';
import { epochMs } from '../../core/units.ts';
import type { DeviceResults } from '../../shared/wire/device-check.ts';

const deviceResult = ['works', 'refused', 'none', 'taken'] as const;

/** The same at the door and in the store. */
export const deviceResultsSchema = z.strictObject({
  camera: z.enum(deviceResult).exactOptional(),
  microphone: z.enum([...deviceResult, 'silent']).exactOptional(),
  loudspeaker: z.enum(['works', 'silent']).exactOptional(),
  line: z.enum(['works', 'voice', 'slow', 'gone']).exactOptional(),
}) satisfies z.ZodType<DeviceResults>;

/** How the devices of guests at home did, as they told it and as it lies among the documents of a tasting, by its old name `kits`; the latest last. */
export const storedDeviceReportsSchema = z.array(
  z.object({
    id: z.string(),
    name: z.string(),
    tried: deviceResultsSchema,
    at: z.number().transform(epochMs),
  }),
);
