import { nanoid } from 'nanoid';
import { type CommandId, commandId } from '../../core/ids.ts';

/** Made on the device, so that asking twice is harmless. Works over plain http, where `randomUUID` does not. */
export const newCommandId = (): CommandId => commandId(nanoid());

/** 32 characters of 64: 192 bits. Whoever holds it holds the seat. */
export const newSeatKey = (): string => nanoid(32);

/** Who answers a survey, or tells of their devices: made on the device anew for each, so that neither leads to the other or to a seat. */
export const newRespondent = (): string => nanoid(24);
