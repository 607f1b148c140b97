import { z } from 'zod';
import { drinks } from '../../core/drinks/drink-kinds.ts';
import { type CueId, commandId, cueId, pourId, seatId } from '../../core/ids.ts';
import type { GuestCommand, HostCommand } from '../../core/session/command.ts';
import { kitItems } from '../../core/session/state.ts';
import { bottleSchema, idSchema, limits, pacingSchema, planSchema } from '../../core/tasting.ts';
import { cleanLine, cleanText } from '../../core/text.ts';
import { epochMs, seconds } from '../../core/units.ts';

/**
 * Messages as they come in from devices, parsed at the door. Strict: a field that nobody knows is a fault of the
 * sender and is said so, not dropped in silence.
 */
const aPour = idSchema.transform(pourId);
const aSeat = idSchema.transform(seatId);
const aCue = z
  .string()
  .regex(/^[A-Za-z0-9_/-]{1,120}$/)
  .transform(cueId);
const somePours = z.array(aPour).min(1).max(limits.pours);
/** An instant up to the year 2096; whether it is past is for the rules to say. */
const anEnd = z.number().int().min(0).max(4e12).transform(epochMs);
const blindCode = z.string().regex(/^\d{3}$/);
const length = (from: number, to: number) => z.number().int().min(from).max(to).transform(seconds);

export const commandIdSchema = z
  .string()
  .regex(/^[A-Za-z0-9_-]{8,40}$/)
  .transform(commandId);

/** A person's name as it stands on every screen. */
export const nameSchema = z.string().max(240).transform(cleanLine).pipe(z.string().min(1).max(limits.name));

/**
 * `OpenDoors` carries no plan on the wire, and `TellResult` no result: the server takes what is stored, and reckons by itself.
 */
export type SentHostCommand =
  | Exclude<HostCommand, { type: 'OpenDoors' | 'TellResult' }>
  | { readonly type: 'OpenDoors' }
  | { readonly type: 'TellResult'; readonly cue: CueId };
export type SentGuestCommand = GuestCommand;

const noDetails = <const Type extends string>(type: Type) => z.strictObject({ type: z.literal(type) });
const noShape = <const Is extends string>(is: Is) => z.strictObject({ is: z.literal(is) });
const withPours = <const Type extends string>(type: Type) =>
  z.strictObject({ type: z.literal(type), pours: somePours });
const withPour = <const Type extends string>(type: Type) =>
  z.strictObject({ type: z.literal(type), pour: aPour });
const withSeat = <const Type extends string>(type: Type) =>
  z.strictObject({ type: z.literal(type), seat: aSeat });

const hostCommandSchema = z.discriminatedUnion('type', [
  noDetails('OpenDoors'),
  z.strictObject({ type: z.literal('Advance'), from: aCue }),
  z.strictObject({ type: z.literal('GoBack'), from: aCue }),
  z.strictObject({ type: z.literal('JumpTo'), cue: aCue, takesBack: aCue.optional() }),
  noDetails('Hold'),
  noDetails('Resume'),
  z.strictObject({ type: z.literal('GiveTime'), seconds: length(5, 3600) }),
  z.strictObject({ type: z.literal('CallBreak'), seconds: length(30, 3600) }),
  z.strictObject({ type: z.literal('Remind'), kind: z.enum(['water', 'spit', 'quiet', 'nudge']) }),
  noDetails('ClearReminder'),
  withPours('OpenDiscussion'),
  withPours('CloseDiscussion'),
  z.strictObject({ type: z.literal('Reveal'), pours: somePours, from: aCue.optional() }),
  z.strictObject({
    type: z.literal('SteerScreen'),
    shows: z.discriminatedUnion('is', [
      noShape('room'),
      noShape('dark'),
      z.strictObject({ is: z.literal('page'), page: z.string().regex(/^[A-Za-z0-9_/:.-]{1,160}$/) }),
    ]),
  }),
  z.strictObject({ type: z.literal('TellResult'), cue: aCue }),
  withPour('DropPour'),
  withPour('RestorePour'),
  z.strictObject({ type: z.literal('SwapBottle'), pour: aPour, bottle: bottleSchema }),
  z.strictObject({ type: z.literal('MendPour'), pour: aPour, bottle: bottleSchema }),
  z.strictObject({ type: z.literal('MendTitle'), title: planSchema.shape.title }),
  z.strictObject({
    type: z.literal('AddPour'),
    pour: aPour,
    drink: z.enum(drinks),
    bottle: bottleSchema,
    code: blindCode.nullable(),
  }),
  z.strictObject({ type: z.literal('ReorderGlasses'), order: somePours }),
  z.strictObject({ type: z.literal('ChoosePacing'), pacing: pacingSchema }),
  z.strictObject({
    type: z.literal('EditCue'),
    cue: aCue,
    seconds: length(5, 7200).optional(),
    say: z.string().max(1000).transform(cleanText).optional(),
  }),
  z.strictObject({ type: z.literal('FitTo'), endsAt: anEnd }),
  noDetails('UndoFit'),
  z.strictObject({ type: z.literal('WishEnd'), endsAt: anEnd.nullable() }),
  noDetails('DropClosingPass'),
  noDetails('RestoreClosingPass'),
  noDetails('ShortenDiscussions'),
  noDetails('RestoreDiscussions'),
  z.strictObject({ type: z.literal('WaitForRemote'), wait: z.boolean() }),
  z.strictObject({ type: z.literal('SetDoors'), doors: z.enum(['open', 'ask', 'closed']) }),
  withSeat('AdmitSeat'),
  withSeat('RemoveSeat'),
  withSeat('RestoreSeat'),
  withSeat('AnswerSeat'),
  withSeat('StopPouring'),
  withSeat('ResumePouring'),
  noDetails('Finish'),
  noDetails('Reopen'),
]) satisfies z.ZodType<SentHostCommand>;

const guestCommandSchema = z.discriminatedUnion('type', [
  noDetails('ReadCautions'),
  noDetails('AcceptGroundRules'),
  z.strictObject({
    type: z.literal('GiveSignal'),
    signal: z.enum(['ready', 'more-time', 'needs-host']).nullable(),
    cue: aCue,
  }),
  z.strictObject({
    type: z.literal('ChangeSeat'),
    name: nameSchema.optional(),
    leftHanded: z.boolean().optional(),
    remote: z.boolean().optional(),
  }),
  withPour('CatchUp'),
  z.strictObject({ type: z.literal('CheckKit'), item: z.enum(kitItems), ready: z.boolean() }),
  noDetails('LeaveTable'),
]) satisfies z.ZodType<SentGuestCommand>;

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
