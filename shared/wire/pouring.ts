import { z } from 'zod';
import { type CommandId, pourId } from '../../core/ids.ts';
import { type Levels, mostPlaces, mostPouringMoves, type Tick } from '../../core/planning/serving/pouring.ts';
import { limits } from '../../core/tasting.ts';
import { commandIdSchema } from './commands.ts';

/** The pour run as the host's devices see it; `version` counts its changes. */
export interface PouringView {
  readonly version: number;
  readonly levels: Levels;
}

const aPour = z
  .string()
  .regex(/^[A-Za-z0-9_-]{1,40}$/)
  .transform(pourId);

/** What a host's device says of the glasses. */
export type PouringCommand =
  /** The id of its envelope is the tick's, by which it can be undone. */
  | ({ readonly type: 'TickGlasses' } & Omit<Tick, 'id'>)
  | { readonly type: 'UndoTick'; readonly tick: CommandId };

const pouringCommandSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('TickGlasses'),
    places: z.array(z.number().int().min(1).max(mostPlaces)).min(1).max(mostPlaces),
    pours: z.array(aPour).min(1).max(limits.pours),
    done: z.number().int().min(1).max(mostPouringMoves),
  }),
  z.strictObject({ type: z.literal('UndoTick'), tick: commandIdSchema }),
]) satisfies z.ZodType<PouringCommand>;

export const pouringEnvelopeSchema = z.strictObject({ id: commandIdSchema, ask: pouringCommandSchema });
