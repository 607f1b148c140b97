import type { RefusalCode } from '../../wire/protocol.ts';

/** What a guest may be refused, apart, so that a phone does not carry what only a host can meet. */
export const guestRefusals = {
  'moved-on': 'The room has moved on; see where it is now, then try again.',
  'not-open': 'The doors are not open yet; wait for the host to open them.',
  finished: 'This tasting is over; your notes are safe, and the host can open it again.',
  'no-such-pour': 'This pour is not part of the tasting; reload the page.',
  'no-such-seat': 'There is no such seat at this table; reload the page.',
  'not-reached': 'The room has not reached this glass yet; wait until it does.',
  'doors-closed': 'The host has closed the doors; ask them to open up for you.',
  'table-full': 'Every seat at this table is taken; ask the host for help.',
  'not-seated': 'You do not have a seat at this table now; ask the host to let you in.',
  'nothing-to-do': 'That is already done; nothing has changed.',
  'too-long': 'This text is too long; shorten it and it will be saved.',
  malformed: 'The server did not understand that; reload the page and try again.',
  'too-large': 'That is too much to send at once; shorten it and try again.',
  'unknown-event': 'The server does not know this request; reload the page.',
  'wrong-role':
    'This device may not do that; use the host’s link to conduct, or your own link to take notes.',
  'wrong-key': 'This link no longer opens this tasting; ask the host for a new one.',
  'wrong-code': 'No tasting has this code; check it with your host. A code ends with its evening.',
  'too-many-tries': 'Too many wrong codes are being tried; open the link or scan the code, or wait a moment.',
  'too-fast': 'That was too fast; wait a second, then try again.',
  'wrong-protocol': 'This page and the server are different versions; reload the page.',
  'foreign-origin': 'This request came from another site; open the address your host gave you.',
  'no-such-tasting': 'This tasting does not exist or has been deleted; ask the host for the right link.',
  'too-many-devices': 'This seat has five devices; remove one under “My seat” first.',
  'notes-closed': 'This phone does not have your notes yet.',
  'guess-closed': 'The name of this glass has been told; your guess stays as it was before.',
  'wrong-words': 'Those are not the four words; look again and take your time.',
  'not-stored': 'This could not be saved; keep this page open and try again in a moment.',
  'set-aside': 'This tasting cannot go on; ask the host for help.',
} satisfies Partial<Record<RefusalCode, string>>;

export type GuestRefusals = Readonly<Record<keyof typeof guestRefusals, string>>;
