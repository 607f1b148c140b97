import type { RefusalCode } from '../../wire/protocol.ts';

/** What a guest may be refused, apart, so that a phone does not carry what only a host can meet. */
export const guestRefusals = {
  'moved-on': 'The room has already moved on; look at where it is now and try again.',
  'not-open': 'The doors are not open yet; wait until the host opens them.',
  finished: 'This tasting is over; your notes are kept, and the host can open it again.',
  'no-such-pour': 'This pour is not part of the tasting; load the page again.',
  'no-such-seat': 'There is no such seat at this table; load the page again.',
  'not-reached': 'The room has not come to this glass yet; wait until it has.',
  'doors-closed': 'The host has closed the doors; ask the host to open them for you.',
  'table-full': 'Every seat at this table is taken; ask the host for help.',
  'not-seated': 'You have no seat at this table now; ask the host to let you in.',
  'nothing-to-do': 'Nothing has changed; it is already so.',
  'too-long': 'This text is too long; shorten it, and it will be saved.',
  malformed: 'The server did not understand this; load the page again, then try once more.',
  'too-large': 'This is too much to send at once; shorten it and try again.',
  'unknown-event': 'The server does not know this request; load the page again.',
  'wrong-role':
    'This device may not do that; use the host’s link to conduct, or your own link to take notes.',
  'wrong-key': 'This link does not open this tasting any more; ask the host for a new one.',
  'wrong-code': 'No tasting has this code; check it with your host. A code ends with its evening.',
  'too-many-tries': 'Too many wrong codes are being tried; open the link or scan the code, or wait a moment.',
  'too-fast': 'That was very fast; wait a second, then try again.',
  'wrong-protocol': 'This page is older or newer than the server; load it again.',
  'foreign-origin': 'This request came from another site; open the address that your host gave you.',
  'no-such-tasting': 'This tasting does not exist or has been deleted; ask the host for the right link.',
  'not-stored': 'This could not be saved on the server; keep this page open and try again in a moment.',
} satisfies Partial<Record<RefusalCode, string>>;

export type GuestRefusals = Readonly<Record<keyof typeof guestRefusals, string>>;
