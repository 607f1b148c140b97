import { z } from 'zod';
import type { CommandId, PourId, SeatId } from '../../core/ids.ts';
import { surenesses } from '../../core/panel/guess/guess.ts';
import { limits, pourIdSchema, strongestAbv } from '../../core/tasting.ts';
import { cleanLine, cleanText } from '../../core/text.ts';
import {
  longestText,
  mostMarks,
  type NoteEntry,
  type NoteField,
  type NoteValue,
  type TextField,
  type WordField,
} from '../notes/entry.ts';
import { feelings, reviewAnswers, strengths } from '../words/closing.ts';
import { commandIdSchema } from './commands.ts';
import {
  type Consents,
  countings,
  type GivenConsents,
  namings,
  pageParts,
  type SharingBefore,
  sharings,
  sharingsBefore,
} from './sharing.ts';

/** A word's code; no key that an object has of its own, for codes become keys. */
const code = z
  .string()
  .min(1)
  .max(60)
  .transform(cleanLine)
  .refine((value) => value !== '' && !(value in Object.prototype), 'not a word');
/** A name off the list for guesses: a code, or the host's own words in it. */
const guessed = z.string().min(1).max(300).transform(cleanLine);
const marksOf = <Mark extends z.ZodType>(mark: Mark) =>
  z.record(code, mark).refine((marks) => Object.keys(marks).length <= mostMarks, 'too many');

const base = {
  id: commandIdSchema,
  pour: pourIdSchema,
  /** The revision from which this device began to write; 0 for a field that it has never seen saved. */
  base: z.number().int().min(0).max(1_000_000),
};
const written = (field: TextField) =>
  z.strictObject({
    ...base,
    field: z.literal(field),
    value: z.string().max(longestText).transform(cleanText),
  });
const marked = (field: WordField) =>
  z.strictObject({ ...base, field: z.literal(field), value: marksOf(z.enum(strengths)) });
const answer = <const Field extends NoteField, Value extends z.ZodType>(field: Field, value: Value) =>
  z.strictObject({ ...base, field: z.literal(field), value });

export const noteSaveSchema = z.discriminatedUnion('field', [
  written('look'),
  written('nose'),
  written('palate'),
  written('finish'),
  written('thoughts'),
  marked('nose-words'),
  marked('palate-words'),
  marked('finish-words'),
  answer('colour', code.nullable()),
  answer('structure', marksOf(z.number().int().min(1).max(5))),
  answer('liking', z.number().int().min(1).max(9).nullable()),
  answer('place', z.number().int().min(1).max(limits.pours).nullable()),
  answer(
    'odd-one-out',
    z.strictObject({ glass: z.number().int().min(1).max(3), guessed: z.boolean() }).nullable(),
  ),
  answer(
    'guess',
    z.strictObject({
      style: guessed.exactOptional(),
      origin: guessed.exactOptional(),
      vintage: z.number().int().min(1850).max(2200).exactOptional(),
      age: z.number().min(0).max(150).exactOptional(),
      abv: z.number().min(0).max(strongestAbv).exactOptional(),
      price: z.number().int().min(1).max(100_000_000).exactOptional(),
      sure: z.literal(surenesses).exactOptional(),
    }),
  ),
  answer('review', marksOf(z.enum(reviewAnswers))),
  answer('feelings', z.array(z.enum(feelings)).max(feelings.length)),
]);

export interface NoteSave {
  readonly id: CommandId;
  readonly pour: PourId;
  readonly field: NoteField;
  readonly value: NoteValue;
  readonly base: number;
}

const counting = z.enum(countings).optional();
const consentShape = {
  page: z
    .strictObject({
      sharing: z.enum(sharings),
      parts: z
        .array(z.enum(pageParts))
        .max(pageParts.length)
        .transform((parts) => pageParts.filter((part) => parts.includes(part))),
    })
    .optional(),
  order: counting,
  liking: counting,
  'odd-one-out': counting,
  guess: counting,
  nearest: z.enum(namings).optional(),
};
/** As the store keeps them; what pages of before permitted is in it too. */
export const keptConsentsSchema = z.strictObject({ ...consentShape, marks: z.literal('counts').optional() });

/** One tap, for as many glasses as it was about. */
export const consentGivingSchema = z.strictObject({
  id: commandIdSchema,
  pours: z
    .array(pourIdSchema)
    .min(1)
    .max(2 * limits.pours)
    .transform((pours) => [...new Set(pours)]),
  consents: z
    .strictObject(consentShape)
    .refine((consents) => Object.values(consents).some((each) => each !== undefined), 'nothing'),
});
export interface ConsentGiving {
  readonly id: CommandId;
  readonly pours: readonly PourId[];
  readonly consents: Consents;
}

/** From pages of before. */
export const noteShareSchema = z.strictObject({
  id: commandIdSchema,
  pour: pourIdSchema,
  sharing: z.enum(sharingsBefore),
});
export type NoteShare = z.infer<typeof noteShareSchema>;

/** A guest's own notebook, to their own devices only. */
export interface NotebookView {
  readonly seat: SeatId;
  readonly entries: readonly NoteEntry[];
  /** What its guest has answered, page by page. */
  readonly consents: readonly GivenConsents[];
  /** The same as pages of before know it: those that are not private. */
  readonly sharings: readonly {
    readonly pour: PourId;
    readonly sharing: Exclude<SharingBefore, 'private'>;
  }[];
}
