import { z } from 'zod';
import type { PourId, SeatId } from '../../core/ids.ts';
import type { GridColumn, GridRow } from '../../core/planning/serving/pouring-grid.ts';
import type { HelperCommand } from '../../core/session/command.ts';
import { seatIdSchema } from '../../core/session/seat-schema.ts';
import type { Seat, Signal } from '../../core/session/state.ts';
import type { Drink } from '../../core/tasting.ts';
import { commandIdSchema } from './commands.ts';

/**
 * What a helper's phone is told [S6]: which bottle goes where, and who calls. Nothing of the running order, of prices, stories
 * or photos, of what anybody writes, or of a guest beyond a name at a place.
 */
export interface HelperView {
  /** Number of events behind it. */
  readonly version: number;
  readonly title: string;
  readonly stage: 'planned' | 'under-way' | 'finished';
  readonly drink: Drink;
  readonly blind: boolean;
  /** Pours whose names everybody may know. */
  readonly named: readonly PourId[];
  readonly columns: readonly GridColumn[];
  readonly rows: readonly HelperRow[];
  readonly calls: readonly Call[];
}

interface HelperRow extends Omit<GridRow, 'glasses'> {
  readonly glasses: readonly (readonly [
    PourId,
    { readonly position: number } | { readonly codes: string },
  ])[];
}

export interface Call extends Pick<Seat, 'name' | 'remote'> {
  readonly seat: SeatId;
  /** From 1, as seats were taken. */
  readonly place: number;
  readonly signal: Extract<Signal, 'needs-host' | 'more-time'>;
}

const helperCommandSchema = z.strictObject({
  type: z.literal('AnswerSeat'),
  seat: seatIdSchema,
}) satisfies z.ZodType<HelperCommand>;

export const helperEnvelopeSchema = z.strictObject({ id: commandIdSchema, ask: helperCommandSchema });
