import { z } from 'zod';

/** Results as strict schemas, as `strict-views.ts` has the views in which they stand. */
const text = z.string();
const number = z.number();
const maybeNumber = number.nullable();
export const roundOf = z.enum(['order', 'liking']);
export const results = z.array(
  z.strictObject({
    cue: text,
    at: number,
    parts: z.array(
      z.discriminatedUnion('outcome', [
        z.strictObject({
          of: roundOf,
          outcome: z.literal('told'),
          pours: z.array(
            z.strictObject({
              pour: text,
              place: maybeNumber,
              mean: maybeNumber,
              spread: z.array(z.strictObject({ at: number, guests: number })),
            }),
          ),
          counted: number,
          given: number,
          meaning: text,
          luck: maybeNumber,
          party: z.boolean(),
          tooFewToShow: z.boolean(),
        }),
        z.strictObject({
          of: roundOf,
          outcome: z.literal('too-few'),
          pours: z.array(z.strictObject({ pour: text })),
        }),
      ]),
    ),
  }),
);
