import { z } from 'zod';
import { type GuessFact, type GuessSheet, guessFacts } from '../../core/panel/guess/guess.ts';
import type { ToldGuesses } from '../../core/panel/guess/room.ts';
import { aPour } from './stored-cue.ts';

/** What there was to guess from, and what was guessed, as it lies in the log: drawn and counted once [Q12]. */
const value = z.union([z.string(), z.number()]);
const choices = z.array(value);
const count = z.number().int().min(0);

export const storedSheetSchema = z.object(
  Object.fromEntries(guessFacts.map((fact) => [fact, choices.exactOptional()])) as Record<
    GuessFact,
    z.ZodExactOptional<typeof choices>
  >,
) satisfies z.ZodType<GuessSheet>;

export const storedGuessesSchema = z.object({
  pour: aPour,
  counts: z.object({ counted: count, of: count }).nullable(),
  facts: z.array(
    z.object({
      fact: z.enum(guessFacts),
      spread: z.array(z.object({ value, guests: z.number().int().min(1) })),
    }),
  ),
}) satisfies z.ZodType<ToldGuesses>;
