import type { TastingTrouble } from '../../wire/http.ts';

/** An evening that cannot be read or conducted, among those that can. */
export const setAsideWords = {
  mark: 'Set aside',
  /** By the number of the step, from 1. */
  why: {
    'plan-unreadable': () => 'Its plan cannot be read.',
    'event-unreadable': (number: number) => `Step ${number} of its log cannot be read.`,
    'event-altered': (number: number) => `Step ${number} of its log is not as it was stored.`,
    'event-missing': (number: number) => `Step ${number} of its log is missing.`,
    'log-damaged': () => 'Its log lies on a damaged part of the disk.',
    faulty: () => 'A fault of the program showed twice while it was conducted.',
  } satisfies Record<TastingTrouble['kind'], (number: number) => string>,
  others: 'All other evenings go on. Save it as it lies, or put a backup in the place of the store.',
  faultyHint:
    'Nothing that was saved is lost. Try again; if it comes back, save it and tell who runs this server.',
  save: 'Save it as it lies',
  retry: 'Try again',
  remove: 'Delete it',
  removeSure: 'Delete this evening with everything in it, its guests’ notes too? There is no way back.',
  removeGo: 'Delete for good',
  keep: 'Keep it',
  gone: 'The evening is deleted.',
  saved: 'Saved. Guests’ notes are not in the file.',
  woken: 'It may be opened again.',
  lostEnd: (steps: number) =>
    steps === 1
      ? 'The last step of this evening is missing from the store. Look where the room stands, then go on.'
      : `The last ${steps} steps of this evening are missing from the store. Look where the room stands, then go on.`,
};
export type SetAsideWords = typeof setAsideWords;
