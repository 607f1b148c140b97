import { z } from 'zod';
import { drinks } from '../drinks/drink-kinds.ts';
import { cueId } from '../ids.ts';
import { bottleSchema, limits, pacingSchema, planSchema, pourIdSchema } from '../tasting.ts';
import { cleanLine, cleanText } from '../text.ts';
import { epochMs, seconds } from '../units.ts';
import { kitItemSchema, seatIdSchema } from './seat-schema.ts';

/**
 * Messages as they come in from devices, parsed at the door, and by that what may be asked of a session. Strict: a field that
 * nobody knows is a fault of the sender and is said so, not dropped in silence.
 */
const aCue = z
  .string()
  .regex(/^[A-Za-z0-9_/-]{1,120}$/)
  .transform(cueId);
const somePours = z.array(pourIdSchema).min(1).max(limits.pours).readonly();
/** An instant up to the year 2096; whether it is past is for the rules to say. */
const anEnd = z.number().int().min(0).max(4e12).transform(epochMs);
const blindCode = z.string().regex(/^\d{3}$/);
const length = (from: number, to: number) => z.number().int().min(from).max(to).transform(seconds);

/** A person's name as it stands on every screen. */
export const nameSchema = z.string().max(240).transform(cleanLine).pipe(z.string().min(1).max(limits.name));

const noDetails = <const Type extends string>(type: Type) => z.strictObject({ type: z.literal(type) });
const noShape = <const Is extends string>(is: Is) => z.strictObject({ is: z.literal(is) });
const withPours = <const Type extends string>(type: Type) =>
  z.strictObject({ type: z.literal(type), pours: somePours });
const withPour = <const Type extends string>(type: Type) =>
  z.strictObject({ type: z.literal(type), pour: pourIdSchema });
const withSeat = <const Type extends string>(type: Type) =>
  z.strictObject({ type: z.literal(type), seat: seatIdSchema });

/** What a host asks for, as a device sends it. */
export const hostCommandSchema = z.discriminatedUnion('type', [
  noDetails('OpenDoors'),
  // They name the cue they leave, so that two taps never skip one [P1].
  z.strictObject({ type: z.literal('Advance'), from: aCue }),
  z.strictObject({ type: z.literal('GoBack'), from: aCue }),
  // `takesBack` names the cue that the room was sent to by mistake: its glass has then not been tasted [P20].
  z.strictObject({ type: z.literal('JumpTo'), cue: aCue, takesBack: aCue.optional() }),
  noDetails('Hold'),
  noDetails('Resume'),
  z.strictObject({ type: z.literal('GiveTime'), seconds: length(5, 3600) }),
  z.strictObject({ type: z.literal('CallBreak'), seconds: length(30, 3600) }),
  z.strictObject({ type: z.literal('Remind'), kind: z.enum(['water', 'spit', 'quiet', 'nudge']) }),
  noDetails('ClearReminder'),
  withPours('OpenDiscussion'),
  withPours('CloseDiscussion'),
  // `from`, where a tap on through the running order tells them: the cue that it was made in [P21].
  z.strictObject({ type: z.literal('Reveal'), pours: somePours, from: aCue.optional() }),
  z.strictObject({
    type: z.literal('SteerScreen'),
    shows: z.discriminatedUnion('is', [
      noShape('room'),
      noShape('dark'),
      z.strictObject({ is: z.literal('page'), page: z.string().regex(/^[A-Za-z0-9_/:.-]{1,160}$/) }),
    ]),
  }),
  // [R1] Names the cue that it tells.
  z.strictObject({ type: z.literal('TellResult'), cue: aCue }),
  withPour('DropPour'),
  withPour('RestorePour'),
  // Another bottle in the place of one that is corked or was forgotten, or the same one with its facts mended [P22].
  z.strictObject({ type: z.literal('SwapBottle'), pour: pourIdSchema, bottle: bottleSchema }),
  z.strictObject({ type: z.literal('MendPour'), pour: pourIdSchema, bottle: bottleSchema }),
  z.strictObject({ type: z.literal('MendTitle'), title: planSchema.shape.title }),
  // A pour that the plan did not have, behind all others. `code`: drawn by the device that asks; null where none is blind.
  z.strictObject({
    type: z.literal('AddPour'),
    pour: pourIdSchema,
    drink: z.enum(drinks),
    bottle: bottleSchema,
    code: blindCode.nullable(),
  }),
  // All glasses still to come, in their new order [P24].
  z.strictObject({ type: z.literal('ReorderGlasses'), order: somePours }),
  z.strictObject({ type: z.literal('ChoosePacing'), pacing: pacingSchema }),
  z.strictObject({
    type: z.literal('EditCue'),
    cue: aCue,
    seconds: length(5, 7200).optional(),
    say: z.string().max(1000).transform(cleanText).optional(),
  }),
  // Fits what remains so that the evening ends then [C2].
  z.strictObject({ type: z.literal('FitTo'), endsAt: anEnd }),
  noDetails('UndoFit'),
  // The end against which the evening is seen to run late; null for none.
  z.strictObject({ type: z.literal('WishEnd'), endsAt: anEnd.nullable() }),
  noDetails('DropClosingPass'),
  noDetails('RestoreClosingPass'),
  // Cuts the discussions still to come to a minute.
  noDetails('ShortenDiscussions'),
  noDetails('RestoreDiscussions'),
  z.strictObject({ type: z.literal('WaitForRemote'), wait: z.boolean() }),
  z.strictObject({ type: z.literal('SetDoors'), doors: z.enum(['open', 'ask', 'closed']) }),
  withSeat('AdmitSeat'),
  withSeat('RemoveSeat'),
  withSeat('RestoreSeat'),
  withSeat('AnswerSeat'),
  // [C4] No more alcohol for this guest: their evening goes on with water; and again, where it was a mistake.
  withSeat('StopPouring'),
  withSeat('ResumePouring'),
  noDetails('Finish'),
  noDetails('Reopen'),
]);

/** What a guest asks for, for the seat they hold. */
export const guestCommandSchema = z.discriminatedUnion('type', [
  // [C5]
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
  z.strictObject({ type: z.literal('CheckKit'), item: kitItemSchema, ready: z.boolean() }),
  noDetails('LeaveTable'),
]);

/** `OpenDoors` carries no plan, and `TellResult` no result: the server takes what is stored, and reckons by itself. */
export type SentHostCommand = z.infer<typeof hostCommandSchema>;
export type GuestCommand = z.infer<typeof guestCommandSchema>;
