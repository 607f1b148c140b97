import type { CueKind } from '../../core/running-order/cue.ts';
import type { StandInGuest } from './stand-in-guest.ts';

/** What happens around the table at this point of the evening, given as a share of all cues. */
export async function comeAndGo(guests: readonly StandInGuest[], cue: CueKind, share: number): Promise<void> {
  for (const [index, guest] of guests.entries()) {
    const spread = (index % 7) / 50;
    switch (guest.habit) {
      case 'late':
        if (share > 0.3 + spread && guest.follower === undefined) await guest.sitDown();
        break;
      case 'sleeps': {
        const asleep = share > 0.45 + spread && share < 0.6 + spread;
        if (asleep && guest.follower !== undefined) guest.fallAsleep();
        if (!asleep && guest.follower === undefined) guest.open();
        break;
      }
      case 'second-device':
        if (share > 0.2 + spread) guest.openSecondDevice();
        break;
      case 'steady':
      case 'reloads':
      case 'drops':
        break;
      default:
        guest.habit satisfies never;
    }
    if (cue === 'farewell' && guest.follower === undefined) guest.open();
  }
}
