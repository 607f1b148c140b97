import { z } from 'zod';
import { commandId } from '../../core/ids.ts';
import {
  type GuestCommand,
  guestCommandSchema,
  hostCommandSchema,
  nameSchema,
  type SentHostCommand,
} from '../../core/session/sent-command.ts';

export type { GuestCommand as SentGuestCommand, SentHostCommand };

export const commandIdSchema = z
  .string()
  .regex(/^[A-Za-z0-9_-]{8,40}$/)
  .transform(commandId);

export const hostEnvelopeSchema = z.strictObject({ id: commandIdSchema, ask: hostCommandSchema });
export const guestEnvelopeSchema = z.strictObject({ id: commandIdSchema, ask: guestCommandSchema });

/** Asked over HTTP by somebody without a seat. The key is made on the device, so that asking again is harmless. */
export const takeSeatSchema = z.strictObject({
  id: commandIdSchema,
  code: z.string().max(40),
  key: z.string().regex(/^[A-Za-z0-9_-]{22,64}$/),
  name: nameSchema,
  leftHanded: z.boolean(),
  remote: z.boolean(),
});
export type TakeSeatRequest = z.input<typeof takeSeatSchema>;
