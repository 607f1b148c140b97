import type { RefusalCode } from '../../wire/protocol.ts';
import { callRefusals } from './call-refusals.ts';
import { guestRefusals } from './guest-refusals.ts';

/** What a person reads when something is refused: one sentence that says what to do. */
export const refusals: Record<RefusalCode, string> = {
  ...guestRefusals,
  ...callRefusals,
  'already-open': 'The doors are already open; change the evening on the hosting page.',
  'not-finished': 'This tasting is still going on; there is nothing to open again.',
  'no-pours': 'Add at least one pour before you open the doors.',
  'at-start': 'This is the beginning; there is nothing before it.',
  'at-end': 'This is the last part; finish the tasting when you are ready.',
  'no-such-cue': 'This part of the evening no longer exists; reload the page.',
  'already-held': 'The clock is already on hold; resume when you are ready.',
  'not-fitted': 'Nothing was shortened, so there is nothing to put back.',
  'not-held': 'The clock is already running.',
  'already-dropped': 'This pour is already dropped.',
  'not-dropped': 'This pour is still part of the tasting.',
  'own-orders':
    'Each guest has an order of their own, drawn by lot and laid out. It cannot be changed now; drop a glass instead.',
  'too-many-pours': 'This evening already has as many pours as it can hold.',
  'code-taken': 'This code is taken. Try again, and another one is drawn.',
  'only-pour': 'This is the last pour left; finish the tasting instead of dropping it.',
  'not-in-discussion': 'No talk is open for this pour.',
  'plan-changed': 'Somebody else has changed this plan; reload it before you save.',
  'plan-invalid': 'This plan cannot be saved as it is; check the marked fields and try again.',
  'no-words': 'No words were made for this seat; let this phone in on the other one.',
  'doubled-id': 'Two pours in this plan are the same one; take one out, add it again, then save.',
  'no-farewell': 'This evening would never reach its goodbye; take out what you added last, then save.',
  'not-a-photo': 'This file cannot be read as a photo: take it again, or choose a JPEG or PNG.',
  'too-many-evenings': 'This house keeps as many evenings as it may: delete one, then try again.',
  'house-full': 'This house has no room left for more: delete photos or evenings, then try again.',
  'too-many-houses': 'Too many houses are being made from here just now; try again in an hour.',
  'too-many-photos': 'This tasting is full of photos: remove some, then try again.',
};
