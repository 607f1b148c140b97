import { z } from 'zod';
import { drinks } from '../../core/drinks/drink-kinds.ts';

/** What a helper's phone may be told, and not a field more. */
const text = z.string();
const number = z.number();

const pouringStep = z.strictObject({ step: z.enum(['poured', 'covered', 'watered']), moves: number });
export const strictHelper = z.strictObject({
  version: number,
  title: text,
  stage: z.enum(['planned', 'under-way', 'finished']),
  drink: z.enum(drinks),
  blind: z.boolean(),
  named: z.array(text),
  columns: z.array(
    z.strictObject({
      id: text,
      kind: z.enum(['pour', 'trial']),
      flight: number,
      code: text.nullable(),
      name: text,
      serve: z.strictObject({ minC: number, maxC: number, authority: text }).nullable(),
      steps: z.array(pouringStep),
    }),
  ),
  rows: z.array(
    z.strictObject({
      place: number,
      name: text.nullable(),
      leftHanded: z.boolean(),
      onlyWater: z.boolean(),
      glasses: z.array(
        z.tuple([text, z.union([z.strictObject({ position: number }), z.strictObject({ codes: text })])]),
      ),
    }),
  ),
  calls: z.array(
    z.strictObject({
      seat: text,
      place: number,
      name: text,
      remote: z.boolean(),
      signal: z.enum(['needs-host', 'more-time']),
    }),
  ),
});
