import { z } from 'zod';
import { allergens } from './drinks/allergens.ts';
import { type Drink, drinks, type Level, levels, type Terms, vocabularies } from './drinks/drink-kinds.ts';
import { type PhotoId, type PourId, photoId, pourId } from './ids.ts';
import { guessingSchema } from './panel/guess/guessing.ts';
import { TRIANGLE_ORDERS } from './panel/presentation-orders.ts';
import { cleanLine, cleanText } from './text.ts';
import { themeSchema } from './theme.ts';

/**
 * The plan a host writes, as one schema. Types are inferred from it; every field that a host may leave out has a
 * default, so that a file saved by an older version still opens. Numbers are in the unit that their name says.
 */

export const limits = {
  pours: 16,
  guests: 200,
  name: 60,
  line: 120,
  text: 4000,
} as const;

/** The strongest a distilled drink can be: the azeotrope of ethanol and water lies near 97 % vol (common practice). */
export const strongestAbv = 96;

export type { Drink, Level };

/** What is to be done before an evening, in order of time. */
export const preparationSteps = ['survey', 'invitation', 'vials', 'ahead', 'paper', 'pouring'] as const;
export type PreparationStep = (typeof preparationSteps)[number];

const line = (limit: number) =>
  z
    .string()
    .max(limit * 4)
    .transform(cleanLine)
    .pipe(z.string().max(limit));
const text = (limit: number) =>
  z
    .string()
    .max(limit * 2)
    .transform(cleanText)
    .pipe(z.string().max(limit));
const webLink = z
  .string()
  .max(500)
  .trim()
  .refine((value) => /^https?:\/\/[^\s]+$/i.test(value), 'A link starts with http:// or https://');

/**
 * An id as it may come from outside. Ids become keys of plain objects, so that the names of what every object has
 * (`constructor`, `__proto__`) are none.
 */
export const idSchema = z
  .string()
  .regex(/^[A-Za-z0-9_-]{1,40}$/)
  .refine((value) => !(value in Object.prototype));
export const pourIdSchema = idSchema.transform((value): PourId => pourId(value));
const photoIdSchema = idSchema.transform((value): PhotoId => photoId(value));

/** Marks that a host gives while tasting ahead, each from 0 to 10. */
const marksSchema = z.strictObject({
  /** 0 quiet, 10 powerful: see `powerStep`. */
  pungency: z.number().min(0).max(10).optional(),
  /** 0 sweet, 10 dry. */
  dryness: z.number().min(0).max(10).optional(),
});

export const pourSchema = z.strictObject({
  id: pourIdSchema,
  drink: z.enum(drinks),
  name: line(limits.line).pipe(z.string().min(1)),
  producer: line(limits.line).optional(),
  region: line(limits.line).optional(),
  country: line(limits.line).optional(),
  style: line(limits.line).optional(),
  ageYears: z.number().min(0).max(150).optional(),
  vintage: z.number().int().min(1700).max(2200).optional(),
  abv: z.number().min(0).max(strongestAbv).optional(),
  /** The strength that the host wants it brought down to with water, in % vol. */
  dilutedAbv: z.number().min(0).max(strongestAbv).optional(),
  cask: line(limits.line).optional(),
  /** Smoke of the malt: 0 none, 1 a trace, 2 clear, 3 heavy. */
  peat: z.number().int().min(0).max(3).optional(),
  colour: z.enum(['white', 'rose', 'orange', 'red']).optional(),
  sparkling: z.boolean().optional(),
  /** As older lists had it beside the kind of wine `liqueur`, which says the same. */
  fortified: z.boolean().optional(),
  /** Kinds of wine that stand apart in the order of categories of a competition. */
  wineKind: z.enum(['film-yeast', 'naturally-sweet', 'ice', 'liqueur', 'mistelle']).optional(),
  /** 1 light to 5 full. */
  body: z.number().int().min(1).max(5).optional(),
  /** Of a wine: 1 hardly any, 5 gripping. */
  tannin: z.number().int().min(1).max(5).optional(),
  sugarGPerL: z.number().min(0).max(800).optional(),
  /** Colour of a beer, Standard Reference Method. */
  srm: z.number().min(0).max(200).optional(),
  /** Bitterness of a beer, International Bitterness Units. */
  ibu: z.number().min(0).max(1000).optional(),
  sour: z.boolean().optional(),
  smoked: z.boolean().optional(),
  marks: marksSchema.optional(),
  bottleMl: z.number().positive().max(20_000).optional(),
  pourMl: z.number().positive().max(500).optional(),
  /** Price of one bottle in the plan's currency, in minor units (cents). */
  priceMinor: z.number().int().min(0).max(100_000_000).optional(),
  /** As the host noted them from the label or the producer; absent while nothing is noted, which says nothing. */
  allergens: z.array(z.enum(allergens)).max(allergens.length).optional(),
  link: webLink.optional(),
  /** What the host recommends to read at home: about the region, the making, the maker. */
  reading: z
    .array(z.strictObject({ title: line(limits.line).pipe(z.string().min(1)), link: webLink }))
    .max(5)
    .optional(),
  /** What the host wants to say about this pour, once it may be known. */
  story: text(limits.text).optional(),
  /** A line from tasting ahead; the host's own, never shown to guests. */
  hostNote: text(1000).optional(),
  photos: z.strictObject({ front: photoIdSchema.optional(), back: photoIdSchema.optional() }).optional(),
});
export type Pour = z.infer<typeof pourSchema>;

/** What may change of a pour while its glass stays what it is: everything but its id and the steps that come of its drink. */
export const bottleSchema = pourSchema.omit({ id: true, drink: true });
export type Bottle = z.infer<typeof bottleSchema>;

export const pacingSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('host') }),
  z.strictObject({ by: z.literal('clock') }),
  /** The steps of a glass run by the clock and wait at its end; everything else by the host. */
  z.strictObject({ by: z.literal('steps') }),
  /** `share` of the seats that are present, from 0.5 to 1. */
  z.strictObject({ by: z.literal('room'), share: z.number().min(0.5).max(1) }),
]);
export type Pacing = z.infer<typeof pacingSchema>;

const factor = z.number().min(0.5).max(3).default(1);

/** How much longer or shorter than the level's own time a kind of step lasts. */
const paceSchema = z.strictObject({
  look: factor,
  nose: factor,
  sip: factor,
  write: factor,
  discussion: factor,
});

const cueEditSchema = z.strictObject({
  seconds: z.number().int().min(5).max(7200).optional(),
  say: text(1000).optional(),
});

const code = z.string().regex(/^\d{3}$/);

/** One odd-one-out: two drinks of the lineup, A and B, in three coded glasses. */
export const trialSchema = z.strictObject({
  /** Its own id, random like a pour's: a notebook keeps the answer under it. */
  id: pourIdSchema,
  /** The flight after whose glasses it is served, from 0. */
  flight: z
    .number()
    .int()
    .min(0)
    .max(limits.pours - 1),
  a: pourIdSchema,
  b: pourIdSchema,
  /** Codes of the glasses, two for each drink: a seat's two alike glasses never share one. */
  codes: z.strictObject({ a: z.tuple([code, code]), b: z.tuple([code, code]) }),
  /** Balanced over seats; seat k is served order k, counted round. */
  orders: z
    .array(z.enum(TRIANGLE_ORDERS))
    .min(1)
    .max(limits.guests * 2),
});
export type Trial = z.infer<typeof trialSchema>;

export const planSchema = z.strictObject({
  format: z.literal(1).default(1),
  title: line(limits.line).default(''),
  hostName: line(limits.name).default(''),
  place: line(limits.line).default(''),
  /** When the doors open, as an instant in ISO 8601 with offset; absent while the date is not set. */
  startsAt: z.iso.datetime({ offset: true }).optional(),
  /** IANA name of the zone in which the host thinks. */
  timeZone: z.string().max(60).default('UTC'),
  welcome: text(limits.text).default(''),
  callLink: webLink.optional(),
  drink: z.enum(drinks).default('spirit'),
  level: z.enum(levels).default('regulars'),
  /** Absent: the words that suit the level, see `termsOf`. */
  terms: z.enum(vocabularies).optional(),
  theme: themeSchema.default({ kind: 'free' }),
  blind: z.boolean().default(false),
  /** With blind pours: each seat meets the glasses of a flight in an order of its own. */
  ownOrders: z.boolean().default(false),
  /** The balanced orders drawn for this tasting: per flight, rows of pour ids; seat k is served row k. */
  servingOrders: z
    .array(z.strictObject({ rows: z.array(z.array(pourIdSchema).max(limits.pours)).max(2 * limits.pours) }))
    .max(limits.pours)
    .default([]),
  /** In the order of tasting. */
  pours: z.array(pourSchema).max(limits.pours).default([]),
  /** Pours in the order of their numbers on paper, once those are fixed; see `glassNumbers`. */
  numbers: z
    .array(pourIdSchema)
    .max(3 * limits.pours)
    .default([]),
  /** What the host has ticked of the preparation. */
  prepared: z.array(z.enum(preparationSteps)).max(preparationSteps.length).default([]),
  /** Sizes of the flights, in order; read through `flightsOf`, which mends what does not add up. */
  flightSizes: z.array(z.number().int().min(1).max(limits.pours)).max(limits.pours).default([]),
  codes: z.record(idSchema, code).default({}),
  practice: z.boolean().default(true),
  closingPass: z.boolean().default(true),
  /** When a spirit gets its drops of water: as it is poured, after it was nosed neat, or never. */
  drops: z.enum(['poured', 'after-nose', 'none']).default('poured'),
  discussion: z.enum(['each-pour', 'each-flight', 'at-the-end']).default('each-flight'),
  /** How the names of blind pours are told: glass by glass, each with its story, or all of a talk together. */
  naming: z.enum(['one-by-one', 'all-at-once']).default('one-by-one'),
  ranking: z.enum(['none', 'each-flight', 'at-the-end']).default('none'),
  /** With blind pours: the names are told before the glasses are put in order, because the host wants it so. */
  rankNamed: z.boolean().default(false),
  liking: z.boolean().default(false),
  /** With blind pours: guests guess what is in the glass, all that the plan knows of it but these facts. */
  guess: guessingSchema.prefault({}),
  trials: z.array(trialSchema).max(3).default([]),
  breakMinutes: z.number().min(5).max(60).default(7),
  pacing: pacingSchema.default({ by: 'host' }),
  pace: paceSchema.prefault({}),
  /** By cue id: what the host changed of the running order. */
  cueEdits: z.record(z.string().max(120), cueEditSchema).default({}),
  guests: z.number().int().min(0).max(limits.guests).default(8),
  remoteGuests: z.number().int().min(0).max(limits.guests).default(0),
  /** ISO 3166-1 alpha-2; chooses standard drinks and the cautions that differ by place. */
  lawOf: z
    .string()
    .regex(/^[A-Z]{2}$/)
    .optional(),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .default('EUR'),
  volumeUnit: z.enum(['ml', 'fl-oz-us', 'fl-oz-imperial']).default('ml'),
  /** The host's own additions to the word boards of this evening. */
  extraWords: z.array(line(40)).max(60).default([]),
});
export type Plan = z.infer<typeof planSchema>;
export type PlanInput = z.input<typeof planSchema>;

/** The words for guests: the host's choice, else plain ones for newcomers and the trade's for everybody else. */
export const termsOf = ({ terms, level }: Pick<Plan, 'terms' | 'level'>): Terms =>
  terms ?? (level === 'newcomers' ? 'plain' : 'trade');

/** A plan with every default and no pours. */
export const blankPlan = (drink: Drink): Plan => planSchema.parse({ drink });

/** How many pours and in which flights a crowd of this level is served (common practice, no source). */
export const usualFlights: Record<Level, readonly number[]> = {
  newcomers: [3],
  regulars: [3, 3],
  devotees: [3, 3, 3],
};

export interface Flight {
  /** From 0. */
  readonly index: number;
  readonly pours: readonly Pour[];
}

/**
 * The flights of a plan: its `flightSizes` where they add up to the pours; otherwise the sizes as far as they go and
 * what is left in flights of three (common practice, no source), a lone last pour joining the flight before it.
 */
export function flightsOf(plan: Pick<Plan, 'pours' | 'flightSizes'>): Flight[] {
  const sizes: number[] = [];
  let left = plan.pours.length;
  for (const wanted of plan.flightSizes) {
    if (left === 0) break;
    const size = Math.min(wanted, left);
    sizes.push(size);
    left -= size;
  }
  while (left > 0) {
    const size = left === 4 ? 4 : Math.min(3, left);
    sizes.push(size);
    left -= size;
  }
  let start = 0;
  return sizes.map((size, index) => {
    const pours = plan.pours.slice(start, start + size);
    start += size;
    return { index, pours };
  });
}
