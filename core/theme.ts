import { z } from 'zod';

const sharedFact = z.enum(['country', 'region', 'style', 'producer']);
/** The theme holds in each flight by itself; absent, in the whole evening. */
const eachFlight = z.literal('flight').optional();

/** What the pours of an evening have in common, and in what they differ. */
export const themeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('free') }),
  /** `by` differs from pour to pour, `held` is the same in all. */
  z.strictObject({
    kind: z.literal('horizontal'),
    by: sharedFact,
    held: z.enum([...sharedFact.options, 'vintage']).optional(),
    each: eachFlight,
  }),
  z.strictObject({ kind: z.literal('vertical'), by: z.enum(['vintage', 'age']), each: eachFlight }),
  z.strictObject({
    kind: z.literal('versus'),
    by: z.enum(['region', 'strength', 'price', 'country', 'style', 'producer']),
    flights: z.enum(['side-by-side', 'matched']).optional(),
  }),
]);
