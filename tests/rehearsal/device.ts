import { nanoid } from 'nanoid';
import { commandId, type TastingId } from '../../core/ids.ts';
import { followAsGuest, type GuestFollower } from '../../shared/follower/guest-follower.ts';
import type { FollowerSocket } from '../../shared/follower/line.ts';
import type { NoteKeep } from '../../shared/follower/notebook.ts';

export const newCommandId = () => commandId(nanoid());

/** Called with every message that comes over the wire, as text, before anybody has read it. */
export type Tap = (packet: string) => void;

/** Listens at the transport, below every parser, also on each new line after a reconnection. */
export function tapped(socket: FollowerSocket, tap: Tap): void {
  socket.io.on('open', () => {
    socket.io.engine.on('packet', ({ type, data }: { type: string; data?: unknown }) => {
      if (type === 'message') tap(String(data));
    });
  });
}

/** What a phone keeps; a page that is loaded again finds it. */
export function keepInMemory(): NoteKeep {
  let kept: string | null = null;
  return {
    read: () => kept,
    write(text) {
      kept = text;
      return true;
    },
  };
}

export interface Device {
  readonly follower: GuestFollower;
  /** Cuts the line without a word; the follower finds its way back. */
  loseNetwork(): void;
}

/** A guest's phone with the page open. */
export function openPage(options: {
  readonly origin: string;
  readonly tasting: TastingId;
  readonly key: string;
  readonly keep: NoteKeep;
  readonly tap: Tap;
}): Device {
  const { origin, tasting, key, keep, tap } = options;
  let line: FollowerSocket | undefined;
  const onSocket = (socket: FollowerSocket) => {
    line = socket;
    tapped(socket, tap);
  };
  const follower = followAsGuest({ origin, tasting, key, keep, newId: newCommandId, onSocket });
  return { follower, loseNetwork: () => void line?.io.engine.close() };
}
