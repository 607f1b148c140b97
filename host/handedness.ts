/** The hand that holds the tablet's side: the big button stands under its thumb. */
export type Hand = 'right' | 'left';

const place = 'quietpour.host-hand';

export function readHand(): Hand {
  try {
    return localStorage.getItem(place) === 'left' ? 'left' : 'right';
  } catch {
    return 'right';
  }
}

export function applyHand(hand: Hand, root: HTMLElement): void {
  root.dataset.hand = hand;
}

export function chooseHand(hand: Hand): void {
  applyHand(hand, document.documentElement);
  try {
    localStorage.setItem(place, hand);
  } catch {
    // Storage refused: the choice holds until the page is closed.
  }
}
