import { z } from 'zod';
import { cueId, type PourId } from '../ids.ts';
import { type Told, told } from '../panel/round-result.ts';
import { pourIdSchema } from '../tasting.ts';
import { seconds } from '../units.ts';

/** As cues lie in the log: an old evening keeps the ones that it was opened with. */
export const wholeSeconds = z.number().min(0).transform(seconds);

const base = {
  id: z.string().max(120).transform(cueId),
  /** The time that the host would like to give. */
  ideal: wholeSeconds,
  /** The least time; re-pacing never goes below it. */
  floor: wholeSeconds,
  /** How willingly this cue gives up time when the evening runs late: 0 never, 1 first. */
  stretch: z.number(),
  /** Only the host can leave a gate; the clock and the room wait there. */
  gate: z.boolean(),
  /** The host's own words to say aloud, instead of the usual ones. */
  say: z.string().exactOptional(),
};
/** From 0. */
const flight = z.number().int().min(0);
const pours: z.ZodType<readonly PourId[]> = z.array(pourIdSchema);

const plainSchema = z.object({ ...base, kind: z.enum(['gathering', 'welcome', 'ground-rules', 'farewell']) });

const stepSchema = z.object({
  ...base,
  kind: z.literal('step'),
  flight,
  pour: pourIdSchema,
  pass: z.enum(['first', 'writing', 'closing']),
  step: z.enum(['swirl', 'look', 'nose', 'sip', 'spit', 'write', 'review', 'reflect']),
  /** With `write`: the glass is taken up again for this sense, and its words are put down. */
  sense: z.enum(['look', 'nose', 'palate', 'finish']).exactOptional(),
});

/** `called`: the host called it in mid-evening; the plan knows nothing of it. */
export const breakSchema = z.object({ ...base, kind: z.literal('break'), called: z.boolean() });

/** Something that concerns several pours at once. */
const roundSchema = z.object({ ...base, kind: z.enum(['ranking', 'discussion', 'reveal']), pours });

/**
 * What the room made of its glasses is told: of these pours the orders in which they were put, how much each was liked, or
 * both. It tells every ranking whose pours are all among its own.
 */
const resultSchema = z.object({
  ...base,
  kind: z.literal('result'),
  pours,
  tells: z.array(z.enum(told)) as z.ZodType<readonly Told[]>,
});

/**
 * One item of the running order: what everybody does now, and for how long. A plan compiles to a flat list of cues;
 * the session is a pointer into it.
 */
export const cueSchema = z.discriminatedUnion('kind', [
  plainSchema,
  z.object({
    ...base,
    kind: z.literal('practice'),
    step: z.enum(['swirl', 'look', 'nose', 'sip', 'spit']),
  }),
  stepSchema,
  // A rest for the palate after a pour.
  z.object({ ...base, kind: z.literal('water'), flight, after: pourIdSchema }),
  breakSchema,
  // Three coded glasses, two alike: which is the odd one? `trial` stands for the three glasses as a pour does for one, so that
  // nothing on the wire tells which is which.
  z.object({
    ...base,
    kind: z.literal('odd-one-out'),
    trial: pourIdSchema,
    a: pourIdSchema,
    b: pourIdSchema,
  }),
  roundSchema,
  resultSchema,
]);

export type Cue = z.infer<typeof cueSchema>;
export type PlainCueKind = z.infer<typeof plainSchema>['kind'];
export type StepCue = z.infer<typeof stepSchema>;
export type BreakCue = z.infer<typeof breakSchema>;
export type RoundCue = z.infer<typeof roundSchema>;
export type ResultCue = z.infer<typeof resultSchema>;
