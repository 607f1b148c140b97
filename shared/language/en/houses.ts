import { several } from '../counting.ts';
/** Where whoever opens the page may make a house of their own. */
export const houseWords = {
  none: 'No link yet?',
  offer: (evenings: number, seats: number) =>
    `Make a house of your own here, a place for your evenings. Nobody asks who you are. It holds ${several(evenings, 'evening', 'evenings')} with up to ${several(seats, 'seat', 'seats')} each. If nothing is planned in it, it is gone after a week.`,
  make: 'Make a house of my own',
  keep: 'Keep the link to your house',
  why: 'Only this link leads back to your evenings: on another device, or when this browser forgets it. Send it to yourself, or print it. Whoever has it can host in your place, so show it to nobody else.',
  show: 'Show the link',
  link: 'The host’s link',
  scan: 'A QR code that opens your house on another device',
  copy: 'Copy the link',
  copied: 'The link is copied.',
  selected: 'The link is selected. Copy it from the menu of your browser.',
};

export type HouseWords = typeof houseWords;
