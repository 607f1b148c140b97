import { z } from 'zod';
import { cueId } from '../ids.ts';
import { told } from '../panel/round-result.ts';
import type { BreakCue, Cue } from '../running-order/cue.ts';
import { pourIdSchema } from '../tasting.ts';
import { seconds } from '../units.ts';

/** The compiled running order as it lies in the log: an old evening keeps the cues that it was opened with. */
export const wholeSeconds = z.number().min(0).transform(seconds);

const base = {
  id: z.string().max(120).transform(cueId),
  ideal: wholeSeconds,
  floor: wholeSeconds,
  stretch: z.number(),
  gate: z.boolean(),
  say: z.string().exactOptional(),
};
const flight = z.number().int().min(0);
const pours = z.array(pourIdSchema);

const breakShape = z.object({
  ...base,
  kind: z.literal('break'),
  called: z.boolean(),
});
export const breakSchema: z.ZodType<BreakCue> = breakShape;

export const cueSchema: z.ZodType<Cue> = z.discriminatedUnion('kind', [
  z.object({ ...base, kind: z.enum(['gathering', 'welcome', 'ground-rules', 'farewell']) }),
  z.object({
    ...base,
    kind: z.literal('practice'),
    step: z.enum(['swirl', 'look', 'nose', 'sip', 'spit']),
  }),
  z.object({
    ...base,
    kind: z.literal('step'),
    flight,
    pour: pourIdSchema,
    pass: z.enum(['first', 'writing', 'closing']),
    step: z.enum(['swirl', 'look', 'nose', 'sip', 'spit', 'write', 'review', 'reflect']),
    sense: z.enum(['look', 'nose', 'palate', 'finish']).exactOptional(),
  }),
  z.object({ ...base, kind: z.literal('water'), flight, after: pourIdSchema }),
  breakShape,
  z.object({
    ...base,
    kind: z.literal('odd-one-out'),
    trial: pourIdSchema,
    a: pourIdSchema,
    b: pourIdSchema,
  }),
  z.object({ ...base, kind: z.enum(['ranking', 'discussion', 'reveal']), pours }),
  z.object({ ...base, kind: z.literal('result'), pours, tells: z.array(z.enum(told)) }),
]);
