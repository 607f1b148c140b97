import { z } from 'zod';
import { type Levels, mostPlaces, mostPouringMoves } from '../../core/planning/serving/pouring.ts';
import { limits, pourIdSchema } from '../../core/tasting.ts';
import { commandIdSchema } from './commands.ts';

/** The pour run as the host's devices see it; `version` counts its changes. */
export interface PouringView {
  readonly version: number;
  readonly levels: Levels;
}

/** What a host's device says of the glasses; the id of the envelope is the tick's, by which it can be undone. */
const pouringCommandSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('TickGlasses'),
    places: z.array(z.number().int().min(1).max(mostPlaces)).min(1).max(mostPlaces).readonly(),
    pours: z.array(pourIdSchema).min(1).max(limits.pours).readonly(),
    done: z.number().int().min(1).max(mostPouringMoves),
  }),
  z.strictObject({ type: z.literal('UndoTick'), tick: commandIdSchema }),
]);
export type PouringCommand = z.infer<typeof pouringCommandSchema>;

export const pouringEnvelopeSchema = z.strictObject({ id: commandIdSchema, ask: pouringCommandSchema });
