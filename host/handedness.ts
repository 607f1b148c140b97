/** The hand that holds the tablet's side: the big button stands under its thumb. */
export type Handedness = 'right' | 'left';

const place = 'quietpour.host-hand';

export function readHandedness(): Handedness {
  try {
    return localStorage.getItem(place) === 'left' ? 'left' : 'right';
  } catch {
    return 'right';
  }
}

export function applyHandedness(hand: Handedness, root: HTMLElement): void {
  root.dataset.hand = hand;
}

export function chooseHandedness(hand: Handedness): void {
  applyHandedness(hand, document.documentElement);
  try {
    localStorage.setItem(place, hand);
  } catch {
    // Storage refused: the choice holds until the page is closed.
  }
}
