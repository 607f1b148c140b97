import { useState } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { clock, hand, ready } from '../../shared/ui/strokes.ts';
import type { SeatSignal, SeatView, StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { AcceptRules } from './accept-rules.tsx';
import { CallLink } from './call-link.tsx';

/** What a guest may tell the host without a word, and the way to their own things. */
export function SignalBar({ stage, own }: { readonly stage: StageUnderWay; readonly own: SeatView }) {
  const { ask, lock, page, status } = useRoom();
  const [asking, setAsking] = useState<SeatSignal>();
  // A signal belongs to the cue that the room is at, not to an older one that still shows.
  const cue = (lock.ahead.value?.status === 'under-way' ? lock.ahead.value : stage).cue.id;

  const give = async (signal: SeatSignal): Promise<void> => {
    setAsking(signal);
    const taken = own.signal === signal;
    const done = await ask({ type: 'GiveSignal', signal: taken ? null : signal, cue });
    setAsking(undefined);
    if (done) status.say(taken ? words.signals.taken : words.signals.given[signal], { unseen: true });
  };
  const props = (signal: SeatSignal) => ({
    pressed: own.signal === signal,
    busy: asking === signal,
    onPress: () => void give(signal),
  });
  return (
    <footer class="room-foot">
      <div class="thumb-bar signals">
        <Button {...props('needs-host')}>
          <Icon of={hand} />
          {words.signals.needsHost}
        </Button>
        {stage.cue.kind === 'ground-rules' && !own.groundRulesAccepted && <AcceptRules />}
        {stage.cue.asksReady && (
          <>
            <Button {...props('more-time')}>
              <Icon of={clock} />
              {words.signals.moreTime}
            </Button>
            <Button {...props('ready')} kind={own.signal === 'ready' ? 'plain' : 'primary'}>
              <Icon of={ready} />
              {words.signals.ready}
            </Button>
          </>
        )}
      </div>
      <div class="thumb-bar tools">
        <Button
          kind="quiet"
          onPress={() => {
            page.value = { at: 'my-seat' };
          }}
        >
          {words.seat.open}
        </Button>
        <CallLink stage={stage} remote={own.remote} />
        <Button
          kind="quiet"
          onPress={() => {
            page.value = { at: 'notes', pour: stage.cue.pours[0] ?? null };
          }}
        >
          {words.notes.open}
        </Button>
      </div>
    </footer>
  );
}
