import { computed } from '@preact/signals';
import type { OpenCall } from '../../shared/call/call-panel.tsx';
import { createCall } from '../../shared/call/create-call.ts';
import { followTurns } from '../../shared/call/turn.ts';
import type { GuestFollower } from '../../shared/follower/guest-follower.ts';
import { turnsClock } from '../../shared/talk/speaking-order.ts';
import type { SeatView } from '../../shared/wire/views.ts';

/** The call as a phone at home is in it. It goes by the room's cue, also while somebody still writes at an older one [F5]. */
export function openGuestCall(follower: GuestFollower, seat: SeatView['seat']): OpenCall {
  const { socket, stage, board, clock, seat: own } = follower;
  const turns = followTurns(
    board,
    () => {
      const now = stage.peek();
      return now?.status === 'under-way' ? turnsClock(now.cue, now.clock) : null;
    },
    clock.now,
  );
  const call = createCall({
    socket,
    role: 'guest',
    seat,
    // Before anything is known it is silent.
    scene: computed(() => {
      const now = stage.value;
      return now === null ? 'hush' : now.status === 'under-way' ? now.cue.call : 'open';
    }),
    turn: turns.turn,
    raised: computed(() => new Set(own.value?.signal === 'needs-host' ? [seat] : [])),
  });
  return {
    call,
    close() {
      turns.close();
      call.close();
    },
  };
}
