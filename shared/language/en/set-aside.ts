import type { StoredPart, TastingTrouble } from '../../wire/http.ts';

const and = new Intl.ListFormat('en', { type: 'conjunction' });

/** An evening that cannot be read or conducted, among those that can. */
export const setAsideWords = {
  mark: 'Set aside',
  /** By the number of the step, from 1. */
  why: {
    'plan-unreadable': () => 'Its plan cannot be read.',
    'event-unreadable': (number: number) => `Step ${number} of its log cannot be read.`,
    'event-altered': (number: number) => `Step ${number} of its log is not as it was saved.`,
    'event-missing': (number: number) => `Step ${number} of its log is missing.`,
    'log-damaged': () => 'Its log is on a damaged part of the disk.',
    faulty: () => 'The program failed twice while you were hosting it.',
  } satisfies Record<TastingTrouble['kind'], (number: number) => string>,
  others: 'All other evenings go on. Save it as it is, or restore a backup of all evenings.',
  faultyHint:
    'Nothing that was saved is lost. Try again; if it fails again, save it and tell the person who runs this server.',
  save: 'Save it as it is',
  retry: 'Try again',
  remove: 'Delete it',
  removeSure: 'Delete this evening with everything in it, guests’ notes too? You cannot undo this.',
  removeGo: 'Delete for good',
  keep: 'Keep it',
  gone: 'The evening is deleted.',
  saved: 'Saved. Guests’ notes are not in the file.',
  woken: 'You can open it again.',
  damaged:
    'The file that holds all evenings is damaged. Ask the person who runs this server to put a backup in its place. Until then, save what you need and change as little as you can.',
  parts: {
    plan: 'the plan',
    'pour-run': 'what has been poured',
    kits: 'who has tried camera and sound at home',
    survey: 'an answer to your questions',
    links: 'a link to it',
    list: 'what this list says of it',
    answers: 'what a device was answered',
    notes: 'what a guest wrote or chose',
    words: 'the four words of a guest',
    photos: 'a photo',
  } satisfies Record<StoredPart, string>,
  altered: (parts: readonly string[]) =>
    `Something here is not as it was saved: ${and.format(parts)}. Look it over; what you save again is right again.`,
  lostEnd: (steps: number) =>
    steps === 1
      ? 'The last step of this evening is missing. Look where the room is, then go on.'
      : `The last ${steps} steps of this evening are missing. Look where the room is, then go on.`,
};
export type SetAsideWords = typeof setAsideWords;
