import { type NoteField, textFields, type WordField, wordFields } from '../notes/entry.ts';
import { type Consents, type PagePart, pageParts, type SharingBefore } from './sharing.ts';

/** How a field may leave its page: on the board with the guest's name, on it without, or in counts only. */
export type Permit = 'named' | 'unnamed' | 'counted';

/** What is not in here stays in its notebook. */
export type Permits = Readonly<Partial<Record<NoteField, Permit>>>;

/** What belongs to each part of a page; the verdict is apart, for each answer in it has a consent of its own. */
const fieldsOf: Readonly<Record<Exclude<PagePart, 'verdict'>, readonly NoteField[]>> = {
  look: ['look', 'colour'],
  nose: ['nose', 'nose-words'],
  palate: ['palate', 'palate-words', 'structure'],
  finish: ['finish', 'finish-words'],
  thoughts: ['thoughts', 'review', 'feelings'],
};

const verdicts = { order: 'place', liking: 'liking', 'odd-one-out': 'odd-one-out' } as const satisfies Record<
  string,
  NoteField
>;

const markFields: readonly (NoteField & (WordField | 'colour' | 'structure'))[] = [
  'colour',
  ...wordFields,
  'structure',
];

/** As it is stored: with what only pages of before could permit, that marks are counted of a page that stays private. */
export type KeptConsents = Consents & { readonly marks?: 'counts' | undefined };

/**
 * Which fields of a page may leave it. A verdict that is only for its guest goes nowhere, and one that counts gets a name
 * only where the page has one and the guest put the verdict with it [Q9, Q10].
 */
export function permitsOf(consents: KeptConsents): Permits {
  const { page, marks } = consents;
  const permits: Partial<Record<NoteField, Permit>> = {};
  if (page === undefined || page.sharing === 'private') {
    if (marks === 'counts') for (const field of markFields) permits[field] = 'counted';
  } else {
    for (const part of textFields) {
      if (page.parts.includes(part)) for (const field of fieldsOf[part]) permits[field] = page.sharing;
    }
  }
  const withName = page?.sharing === 'named' && page.parts.includes('verdict');
  for (const [answer, field] of Object.entries(verdicts)) {
    if (consents[answer as keyof typeof verdicts] === 'counts')
      permits[field] = withName ? 'named' : 'counted';
  }
  return permits;
}

/** What a choice on a page of before comes to. */
export function consentsBefore(sharing: SharingBefore): KeptConsents {
  const choice = sharing === 'private' ? 'only-for-me' : 'counts';
  return {
    page: sharing === 'shared' ? { sharing: 'named', parts: pageParts } : { sharing: 'private', parts: [] },
    order: choice,
    liking: choice,
    'odd-one-out': choice,
    ...(sharing === 'counted' ? { marks: 'counts' } : {}),
  };
}

/** What a page of before is told of these. */
export function sharingBefore(consents: KeptConsents): SharingBefore {
  if (consents.page?.sharing === 'named') return 'shared';
  return Object.keys(permitsOf(consents)).length > 0 ? 'counted' : 'private';
}

/** What stands after a guest has answered again: what they said of the page takes the place of all said of it before. */
export function withConsents(kept: KeptConsents, given: KeptConsents): KeptConsents {
  const { marks: _, ...rest } = kept;
  return { ...(given.page === undefined ? kept : rest), ...given };
}
