import { z } from 'zod';
import { guessFacts } from './guess.ts';

/** What a host chooses of guesses: whether, and which facts are not asked. A price is not everybody's business. */
export const guessingSchema = z.strictObject({
  on: z.boolean().default(true),
  without: z.array(z.enum(guessFacts)).default(['price']),
});
