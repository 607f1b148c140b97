import { z } from 'zod';
import { cueId } from '../ids.ts';
import type { Cue } from '../running-order/cue.ts';
import { breakSchema, cueSchema, wholeSeconds } from '../running-order/cue-schema.ts';
import { works } from '../running-order/cue-traits.ts';
import { bottleSchema, pacingSchema, planSchema, pourIdSchema, pourSchema } from '../tasting.ts';
import { durationMs, epochMs } from '../units.ts';
import { kitItemSchema, seatIdSchema, seatSchema } from './seat-schema.ts';
import { guessesSchema, sheetSchema } from './stored-guesses.ts';
import { resultSchema } from './stored-result.ts';

const listOf = <Each extends z.ZodType>(each: Each): z.ZodType<readonly z.output<Each>[]> => z.array(each);
const cues: z.ZodType<readonly Cue[]> = z.array(cueSchema).min(1);
const at = z.number().transform(epochMs);
const ms = z.number().transform(durationMs);
const aCue = z.string().max(120).transform(cueId);
const pours = listOf(pourIdSchema);
const lengths = listOf(z.object({ cue: aCue, seconds: wholeSeconds }));
const habit = z.object({ mean: z.number(), variance: z.number().min(0) });

/** The glasses in a new order, as whole parts of the plan and the running order that came of it. */
const arranged = z.object({
  order: pours,
  numbers: pours,
  flightSizes: listOf(z.number().int().min(1)),
  servingOrders: z.array(z.object({ rows: z.array(z.array(pourIdSchema)) })),
  // The flight of each odd-one-out that now comes after another one.
  trials: listOf(z.object({ trial: pourIdSchema, flight: z.number().int().min(0) })),
  cues,
});

const event = <const Type extends string, Shape extends z.ZodRawShape>(type: Type, shape: Shape) =>
  z.object({ type: z.literal(type), ...shape });

/**
 * What happened, in the past tense, as it lies in the log and is read back after its upcast. Everything that a replay needs
 * stands in the event, the compiled running order included, so that an old log means the same under a newer version of the
 * rules. A field that nobody knows is dropped; one that is missing or of another kind makes the event unreadable.
 */
export const eventSchema = z.discriminatedUnion('type', [
  event('DoorsOpened', {
    plan: planSchema,
    cues,
    habits: z.record(z.enum(works), habit),
    // What there is to choose from for guesses, drawn for this evening; null where none are asked for.
    guess: sheetSchema.nullable(),
    at,
  }),
  event('CueEntered', {
    cue: aCue,
    // Server time at which it takes effect on every screen.
    at,
    by: z.enum(['host', 'clock', 'room']),
    // Takes back the jump or the Next that led to the cue it leaves [P20].
    takesBack: z.literal(true).optional(),
  }),
  event('ClockHeld', { remaining: ms, at }),
  event('ClockResumed', { endsAt: at }),
  event('TimeGiven', { by: ms }),
  // Stands before the cue it interrupts, which is begun again afterwards.
  event('BreakCalled', { cue: breakSchema, before: aCue }),
  event('ReminderGiven', { kind: z.enum(['water', 'spit', 'quiet', 'nudge']), at }),
  event('ReminderCleared', {}),
  event('DiscussionOpened', { pours, at }),
  event('DiscussionClosed', { pours }),
  event('PoursRevealed', { pours }),
  event('ScreenSteered', {
    shows: z.discriminatedUnion('is', [
      z.object({ is: z.literal('room') }),
      z.object({ is: z.literal('dark') }),
      z.object({ is: z.literal('page'), page: z.string() }),
    ]),
  }),
  event('ResultTold', { result: resultSchema }),
  // With the names of the same moment [Q12].
  event('GuessesTold', { told: listOf(guessesSchema) }),
  event('PourDropped', { pour: pourIdSchema }),
  event('PourRestored', { pour: pourIdSchema }),
  // `swapped`: it is another bottle; else the facts of the same one were mended.
  event('BottleChanged', { pour: pourIdSchema, bottle: bottleSchema, swapped: z.boolean() }),
  event('TitleMended', { title: z.string() }),
  event('PourAdded', { pour: pourSchema, code: z.string().nullable(), arranged }),
  event('GlassesReordered', { arranged }),
  event('PacingChosen', { pacing: pacingSchema }),
  event('CueEdited', {
    cue: aCue,
    ideal: wholeSeconds,
    floor: wholeSeconds,
    say: z.string().exactOptional(),
  }),
  // `endsAt`: the end it was fitted to; absent in logs of earlier versions.
  event('RunningOrderFitted', { lengths, was: lengths, endsAt: at.exactOptional() }),
  event('FitUndone', {}),
  event('EndWished', { endsAt: at.nullable() }),
  event('ClosingPassDropped', {}),
  event('ClosingPassRestored', {}),
  event('DiscussionsShortened', { cues: listOf(aCue), to: wholeSeconds }),
  event('DiscussionsRestored', {}),
  event('RemoteAwaited', { wait: z.boolean() }),
  event('DoorsSet', { doors: z.enum(['open', 'ask', 'closed']) }),
  event('SeatTaken', { seat: seatSchema }),
  event('SeatChanged', {
    seat: seatIdSchema,
    name: z.string().exactOptional(),
    leftHanded: z.boolean().exactOptional(),
    remote: z.boolean().exactOptional(),
  }),
  event('SeatAdmitted', { seat: seatIdSchema }),
  event('SeatLeft', { seat: seatIdSchema }),
  event('SeatRemoved', { seat: seatIdSchema }),
  event('SeatRestored', { seat: seatIdSchema }),
  // To somebody who came to a full table [S3]; nothing is left of it.
  event('SeatGaveWay', { seat: seatIdSchema }),
  event('CautionsRead', { seat: seatIdSchema }),
  event('GroundRulesAccepted', { seat: seatIdSchema }),
  event('PouringStopped', { seat: seatIdSchema }),
  event('PouringResumed', { seat: seatIdSchema }),
  event('SignalGiven', {
    seat: seatIdSchema,
    signal: z.enum(['ready', 'more-time', 'needs-host']).nullable(),
  }),
  event('PourCaughtUp', { seat: seatIdSchema, pour: pourIdSchema }),
  event('KitChecked', { seat: seatIdSchema, item: kitItemSchema, ready: z.boolean() }),
  event('TastingFinished', { at }),
  event('TastingReopened', { at }),
]);
export type SessionEvent = z.infer<typeof eventSchema>;
export type Arrangement = z.infer<typeof arranged>;
