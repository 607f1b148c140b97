import { z } from 'zod';

const value = z.union([z.string(), z.number()]);
/** Facts of guesses, each with `Value`; a fact that nobody guesses is not there. */
const byFact = <Value extends z.ZodType>(each: Value) =>
  z.strictObject({
    style: each.optional(),
    origin: each.optional(),
    vintage: each.optional(),
    age: each.optional(),
    abv: each.optional(),
    price: each.optional(),
  });
export const strictGuess = byFact(z.array(value));
export const strictTruth = byFact(value);
