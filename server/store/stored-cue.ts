import { z } from 'zod';
import { cueId, pourId } from '../../core/ids.ts';
import { told } from '../../core/panel/round-result.ts';
import type { BreakCue, Cue } from '../../core/running-order/cue.ts';
import { idSchema } from '../../core/tasting.ts';
import { seconds } from '../../core/units.ts';

/** The compiled running order as it lies in the log: an old evening keeps the cues that it was opened with. */
export const aPour = idSchema.transform(pourId);
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
const pours = z.array(aPour);

export const storedCalledBreakSchema = z.object({
  ...base,
  kind: z.literal('break'),
  called: z.boolean(),
}) satisfies z.ZodType<BreakCue>;

export const storedCueSchema = z.discriminatedUnion('kind', [
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
    pour: aPour,
    pass: z.enum(['first', 'writing', 'closing']),
    step: z.enum(['swirl', 'look', 'nose', 'sip', 'spit', 'write', 'review', 'reflect']),
    sense: z.enum(['look', 'nose', 'palate', 'finish']).exactOptional(),
  }),
  z.object({ ...base, kind: z.literal('water'), flight, after: aPour }),
  storedCalledBreakSchema,
  z.object({ ...base, kind: z.literal('odd-one-out'), trial: aPour, a: aPour, b: aPour }),
  z.object({ ...base, kind: z.enum(['ranking', 'discussion', 'reveal']), pours }),
  z.object({ ...base, kind: z.literal('result'), pours, tells: z.array(z.enum(told)) }),
]) satisfies z.ZodType<Cue>;
