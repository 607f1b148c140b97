import { z } from 'zod';
import { cueId, seatId } from '../../core/ids.ts';
import { works } from '../../core/running-order/cue-traits.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import { kitItems } from '../../core/session/state.ts';
import { bottleSchema, idSchema, pacingSchema, planSchema, pourSchema } from '../../core/tasting.ts';
import { durationMs, epochMs } from '../../core/units.ts';
import { aPour, storedCalledBreakSchema, storedCueSchema, wholeSeconds } from './stored-cue.ts';
import { storedGuessesSchema, storedSheetSchema } from './stored-guesses.ts';
import { storedResultSchema } from './stored-result.ts';

/**
 * Events as they lie in the log, read back after their upcast. A field that nobody knows is dropped; one that is missing or
 * of another kind makes the event unreadable. `satisfies` holds them to the events of the session, in both directions.
 */
const at = z.number().transform(epochMs);
const ms = z.number().transform(durationMs);
const aSeat = idSchema.transform(seatId);
const aCue = z.string().max(120).transform(cueId);
const pours = z.array(aPour);
const lengths = z.array(z.object({ cue: aCue, seconds: wholeSeconds }));
const habit = z.object({ mean: z.number(), variance: z.number().min(0) });

const arranged = z.object({
  order: pours,
  numbers: pours,
  flightSizes: z.array(z.number().int().min(1)),
  servingOrders: z.array(z.object({ rows: z.array(pours) })),
  trials: z.array(z.object({ trial: aPour, flight: z.number().int().min(0) })),
  cues: z.array(storedCueSchema).min(1),
});

const seatSchema = z.object({
  id: aSeat,
  name: z.string(),
  leftHanded: z.boolean(),
  remote: z.boolean(),
  presence: z.enum(['seated', 'waiting', 'left', 'removed']),
  cautionsRead: z.boolean(),
  groundRulesAccepted: z.boolean(),
  onlyWater: z.boolean(),
  takenAt: at,
  row: z.number().int().min(0),
  kit: z.array(z.enum(kitItems)),
  missed: pours,
});

const event = <const Type extends string, Shape extends z.ZodRawShape>(type: Type, shape: Shape) =>
  z.object({ type: z.literal(type), ...shape });

export const storedEventSchema = z.discriminatedUnion('type', [
  event('DoorsOpened', {
    plan: planSchema,
    cues: z.array(storedCueSchema).min(1),
    habits: z.record(z.enum(works), habit),
    guess: storedSheetSchema.nullable(),
    at,
  }),
  event('CueEntered', {
    cue: aCue,
    at,
    by: z.enum(['host', 'clock', 'room']),
    takesBack: z.literal(true).optional(),
  }),
  event('ClockHeld', { remaining: ms, at }),
  event('ClockResumed', { endsAt: at }),
  event('TimeGiven', { by: ms }),
  event('BreakCalled', { cue: storedCalledBreakSchema, before: aCue }),
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
  event('ResultTold', { result: storedResultSchema }),
  event('GuessesTold', { told: z.array(storedGuessesSchema) }),
  event('PourDropped', { pour: aPour }),
  event('PourRestored', { pour: aPour }),
  event('BottleChanged', { pour: aPour, bottle: bottleSchema, swapped: z.boolean() }),
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
  event('RunningOrderFitted', { lengths, was: lengths, endsAt: at.exactOptional() }),
  event('FitUndone', {}),
  event('EndWished', { endsAt: at.nullable() }),
  event('ClosingPassDropped', {}),
  event('ClosingPassRestored', {}),
  event('DiscussionsShortened', { cues: z.array(aCue), to: wholeSeconds }),
  event('DiscussionsRestored', {}),
  event('RemoteAwaited', { wait: z.boolean() }),
  event('DoorsSet', { doors: z.enum(['open', 'ask', 'closed']) }),
  event('SeatTaken', { seat: seatSchema }),
  event('SeatChanged', {
    seat: aSeat,
    name: z.string().exactOptional(),
    leftHanded: z.boolean().exactOptional(),
    remote: z.boolean().exactOptional(),
  }),
  event('SeatAdmitted', { seat: aSeat }),
  event('SeatLeft', { seat: aSeat }),
  event('SeatRemoved', { seat: aSeat }),
  event('SeatRestored', { seat: aSeat }),
  event('SeatGaveWay', { seat: aSeat }),
  event('CautionsRead', { seat: aSeat }),
  event('GroundRulesAccepted', { seat: aSeat }),
  event('PouringStopped', { seat: aSeat }),
  event('PouringResumed', { seat: aSeat }),
  event('SignalGiven', { seat: aSeat, signal: z.enum(['ready', 'more-time', 'needs-host']).nullable() }),
  event('PourCaughtUp', { seat: aSeat, pour: aPour }),
  event('KitChecked', { seat: aSeat, item: z.enum(kitItems), ready: z.boolean() }),
  event('TastingFinished', { at }),
  event('TastingReopened', { at }),
]) satisfies z.ZodType<SessionEvent>;

/** Every event that the session knows has a schema: a new one without a line above does not compile. */
type Missing = Exclude<SessionEvent['type'], z.infer<typeof storedEventSchema>['type']>;
true satisfies [Missing] extends [never] ? true : Missing;
