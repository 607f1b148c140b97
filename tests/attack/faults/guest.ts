import { commandId, pourId, type TastingId } from '../../../core/ids.ts';
import { followAsGuest, type GuestFollower } from '../../../shared/follower/guest-follower.ts';
import { newId } from '../../server/support/device.ts';
import { aKey, type House } from '../../server/support/house.ts';

/** A guest as the app has one, behind whatever network the origin leads through. */
export interface FaultyGuest {
  readonly follower: GuestFollower;
  readonly write: (words: string) => void;
  /** The newest stage is shown, and everything written is on the server. */
  readonly level: (version: number) => boolean;
}

export async function seatGuest(
  house: House,
  made: { readonly tasting: TastingId; readonly code: string },
  origin: string,
): Promise<FaultyGuest> {
  const key = aKey();
  await house.takeSeat(made.code, { key });
  let kept: string | null = null;
  const follower = followAsGuest({
    origin,
    tasting: made.tasting,
    key,
    newId: () => commandId(newId()),
    keep: {
      read: () => kept,
      write: (text) => {
        kept = text;
        return true;
      },
    },
  });
  const saved = () =>
    [...follower.notebook.entries.peek().values()].every(({ state }) => state.status === 'saved');
  return {
    follower,
    write: (words) => follower.notebook.write(pourId('one'), 'nose', words),
    level: (version) => (follower.stage.peek()?.version ?? -1) >= version && saved(),
  };
}
