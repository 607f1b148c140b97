import { computed } from '@preact/signals';
import { traitsOf } from '../../../core/running-order/cue-traits.ts';
import type { OpenCall } from '../../../shared/call/call-panel.tsx';
import { createCall } from '../../../shared/call/create-call.ts';
import { followTurns } from '../../../shared/call/turn.ts';
import type { HostFollower } from '../../../shared/follower/host-follower.ts';
import { turnsClock } from '../../../shared/talk/speaking-order.ts';

/** The call as the host's tablet is in it: by the cue that shows, as every other device. */
export function openHostCall({ socket, view, runningOrder, board, clock }: HostFollower): OpenCall {
  const cueNow = computed(() => {
    const now = view.value;
    return now?.status === 'under-way'
      ? runningOrder.value?.cues.find(({ id }) => id === now.cue)
      : undefined;
  });
  const turns = followTurns(
    board,
    () => {
      const [now, cue] = [view.peek(), cueNow.peek()];
      return now?.status === 'under-way' && cue ? turnsClock(traitsOf(cue), now.clock) : null;
    },
    clock.now,
  );
  const call = createCall({
    socket,
    role: 'host',
    seat: null,
    scene: computed(() => {
      const cue = cueNow.value;
      return cue === undefined ? 'open' : traitsOf(cue).call;
    }),
    turn: turns.turn,
    raised: computed(
      () =>
        new Set(
          (view.value?.seats ?? []).filter(({ signal }) => signal === 'needs-host').map(({ id }) => id),
        ),
    ),
  });
  return {
    call,
    close() {
      turns.close();
      call.close();
    },
  };
}
