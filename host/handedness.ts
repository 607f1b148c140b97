import { keepText, keptText } from '../shared/page/device-storage.ts';

/** The hand that holds the tablet's side: the big button stands under its thumb. */
export type Handedness = 'right' | 'left';

const place = 'quietpour.host-hand';

export const readHandedness = (): Handedness => (keptText(place) === 'left' ? 'left' : 'right');

export function applyHandedness(hand: Handedness, root: HTMLElement): void {
  root.dataset.hand = hand;
}

/** Where storage is refused the choice holds until the page is closed. */
export function chooseHandedness(hand: Handedness): void {
  applyHandedness(hand, document.documentElement);
  keepText(place, hand);
}
