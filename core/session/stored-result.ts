import { z } from 'zod';
import { cueId } from '../ids.ts';
import { type ToldResult, told } from '../panel/round-result.ts';
import { pourIdSchema } from '../tasting.ts';
import { epochMs } from '../units.ts';

/** A result as it lies in the log: it was reckoned once, and is told as it was told first [R1]. */
const figure = z.object({
  pour: pourIdSchema,
  place: z.number().nullable(),
  mean: z.number().nullable(),
  spread: z.array(z.object({ at: z.number(), guests: z.number().int().min(1) })),
});
const of = z.enum(told);
const count = z.number().int().min(0);

export const resultSchema: z.ZodType<ToldResult> = z.object({
  cue: z.string().max(120).transform(cueId),
  at: z.number().transform(epochMs),
  parts: z.array(
    z.discriminatedUnion('outcome', [
      z.object({
        of,
        outcome: z.literal('told'),
        pours: z.array(figure),
        counted: count,
        given: count,
        meaning: z.enum([
          'clear-favourite',
          'favourites-share',
          'no-agreement-shown',
          'all-tied',
          'not-compared',
        ]),
        luck: z.number().nullable(),
        party: z.boolean(),
        tooFewToShow: z.boolean(),
      }),
      z.object({ of, outcome: z.literal('too-few'), pours: z.array(z.object({ pour: pourIdSchema })) }),
    ]),
  ),
});
