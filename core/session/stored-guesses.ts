import { z } from 'zod';
import { type GuessFact, type GuessSheet, guessFacts } from '../panel/guess/guess.ts';
import type { ToldGuesses } from '../panel/guess/room.ts';
import { pourIdSchema } from '../tasting.ts';

/** What there was to guess from, and what was guessed, as it lies in the log: drawn and counted once [Q12]. */
const value = z.union([z.string(), z.number()]);
const choices = z.array(value);
const count = z.number().int().min(0);

export const sheetSchema: z.ZodType<GuessSheet> = z.object(
  Object.fromEntries(guessFacts.map((fact) => [fact, choices.exactOptional()])) as Record<
    GuessFact,
    z.ZodExactOptional<typeof choices>
  >,
);

export const guessesSchema: z.ZodType<ToldGuesses> = z.object({
  pour: pourIdSchema,
  counts: z.object({ counted: count, of: count }).nullable(),
  facts: z.array(
    z.object({
      fact: z.enum(guessFacts),
      spread: z.array(z.object({ value, guests: z.number().int().min(1) })),
    }),
  ),
});
