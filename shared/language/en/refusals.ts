import type { RefusalCode } from '../../wire/protocol.ts';
import { guestRefusals } from './guest-refusals.ts';

/** What a person reads when something is refused: one sentence that says what to do. */
export const refusals: Record<RefusalCode, string> = {
  ...guestRefusals,
  'already-open': 'The doors are open already; change the evening from the conducting page.',
  'not-finished': 'This tasting is still going on; there is nothing to open again.',
  'no-pours': 'Add at least one pour before you open the doors.',
  'at-start': 'This is the beginning; there is nothing before it.',
  'at-end': 'This is the last part; finish the tasting when you are ready.',
  'no-such-cue': 'This part of the evening does not exist any more; load the page again.',
  'already-held': 'The clock is stopped already; resume when you are ready.',
  'not-fitted': 'The running order was not fitted to an end, so there is nothing to put back.',
  'not-held': 'The clock is running already.',
  'already-dropped': 'This pour has been dropped already.',
  'not-dropped': 'This pour is still part of the tasting.',
  'only-pour': 'This is the last pour left; finish the tasting instead of dropping it.',
  'not-in-discussion': 'No discussion is open for this pour.',
  'plan-changed': 'Somebody has changed this plan in the meantime; load it again before you save.',
  'plan-invalid': 'This plan cannot be kept as it is; check the marked fields and save again.',
  'not-a-photo': 'This file cannot be read as a photo: take it again, or choose a JPEG or PNG.',
  'too-many-photos': 'This tasting has as many photos as it can hold: remove some, then try again.',
};
