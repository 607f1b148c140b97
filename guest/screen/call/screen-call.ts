import { computed } from '@preact/signals';
import type { OpenCall } from '../../../shared/call/call-panel.tsx';
import { createCall } from '../../../shared/call/create-call.ts';
import { createOwnMedia } from '../../../shared/call/own-media.ts';
import { followTurns } from '../../../shared/call/turn.ts';
import type { ScreenFollower } from '../../../shared/follower/screen-follower.ts';
import { turnsClock } from '../../../shared/talk/speaking-order.ts';

/** The call as a device of the room is in it: as a television, or as the camera at the table. */
export function openScreenCall(follower: ScreenFollower, role: 'screen' | 'room'): OpenCall {
  const { socket, stage, board, clock } = follower;
  const turns = followTurns(
    board,
    () => {
      const now = stage.peek();
      return now?.status === 'under-way' ? turnsClock(now.cue, now.clock) : null;
    },
    clock.now,
  );
  const call = createCall(
    {
      socket,
      role,
      seat: null,
      scene: computed(() => {
        const now = stage.value;
        return now === null ? 'hush' : now.status === 'under-way' ? now.cue.call : 'open';
      }),
      turn: turns.turn,
      raised: computed(() => new Set()),
    },
    createOwnMedia('environment'),
  );
  return {
    call,
    close() {
      turns.close();
      call.close();
    },
  };
}
