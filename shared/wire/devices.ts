import { z } from 'zod';
import type { EpochMs } from '../../core/units.ts';

/** Names a device of a seat to the other devices of that seat. It opens nothing. */
export type DeviceId = string & { readonly device: unique symbol };
export const deviceId = (value: string): DeviceId => value as DeviceId;

/** How a device came to a seat: it took it at the door, had a link from one of its devices, or had one from the host. */
export const cameBy = ['door', 'link', 'host'] as const;
export type CameBy = (typeof cameBy)[number];

/** What a seat's devices know of each other; to them only. */
export interface DevicesView {
  /** The device that this is sent to. */
  readonly own: DeviceId;
  /** Whether it has the seat's notes. Without them it follows, signals and writes on pages of its own. */
  readonly opens: boolean;
  /** What it shows while it asks for the notes, so that nobody lets in a stranger's; null when it has them. */
  readonly number: number | null;
  /** Oldest first; of a device without the notes only itself. */
  readonly devices: readonly DeviceSeen[];
  /** Whether this guest has four words. */
  readonly words: boolean;
  /** How often they may be tried now, and when once more; null when that makes no difference. */
  readonly tries: { readonly left: number; readonly moreAt: EpochMs | null };
}

export interface DeviceSeen {
  readonly device: DeviceId;
  readonly came: CameBy;
  /** 0 where it came before this was kept. */
  readonly at: EpochMs;
  readonly opens: boolean;
  /** A link that nobody has used yet. */
  readonly link: boolean;
  /** Shown on it while it asks for the notes. */
  readonly number: number | null;
}

const aDevice = z
  .string()
  .regex(/^[A-Za-z0-9_-]{1,40}$/)
  .transform(deviceId);

/** What a device asks about the devices of its seat. */
export const deviceAskSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('LetIn'), device: aDevice }),
  z.strictObject({ type: z.literal('End'), device: aDevice }),
  // Four new words in place of those before.
  z.strictObject({ type: z.literal('MakeWords'), language: z.string().max(20) }),
  z.strictObject({ type: z.literal('SayWords'), words: z.string().max(200) }),
]);
export type DeviceAsk = z.infer<typeof deviceAskSchema>;

/** Over HTTP: a link becomes a device with a key that it has made itself, and that nobody else has seen. */
export const joinSeatSchema = z.strictObject({
  tasting: z.string().regex(/^[A-Za-z0-9_-]{1,40}$/),
  link: z.string().regex(/^[A-Za-z0-9_-]{22,64}$/),
  key: z.string().regex(/^[A-Za-z0-9_-]{22,64}$/),
});
export type JoinSeatRequest = z.infer<typeof joinSeatSchema>;
