import { useEffect } from 'preact/hooks';
import type { Call } from '../../../shared/call/call.ts';
import { CallPanel as Panel } from '../../../shared/call/call-panel.tsx';
import { nameOfPeer } from '../../../shared/call/call-words.ts';
import { DeviceButton } from '../../../shared/call/device-button.tsx';
import { Voices } from '../../../shared/call/pictures.tsx';
import { callWords as words } from '../../../shared/language/en/call.ts';
import { Button } from '../../../shared/ui/button.tsx';
import type { EveningContext } from '../../evening/evening-context.ts';
import { openHostCall } from './host-call.ts';

/** In the table's panel, beside the seats of those at home. */
export function CallPanel({ evening: { call, follower } }: { readonly evening: EveningContext }) {
  useEffect(() => {
    call.value ??= openHostCall(follower);
  }, [call, follower]);
  return call.value && <Panel call={call.value.call} />;
}

interface CallAboveProps {
  readonly call: Call;
  /** The page has its own panel of the call. */
  readonly seen: boolean;
  /** Leads to that page; undefined where it is not to be had. */
  readonly room: string | undefined;
  /** To be called when it has begun, once. */
  readonly onBegun: () => void;
}

/** The call of an evening whatever page of it the host looks at: its voices, and a sign that one is still heard. */
export function CallAbove({ call, seen, room, onBegun }: CallAboveProps) {
  const on = call.place.value.at === 'in';
  useEffect(() => {
    if (on) onBegun();
    // The caller's function is a new one each time.
  }, [on]);
  if (!on) return null;
  const others = call.others.value.filter(({ role }) => role !== 'screen');
  return (
    <>
      <Voices call={call} />
      {!seen && (
        <aside class="call-above" aria-label={words.title}>
          <p>{others.length === 0 ? words.nobody : words.inCall(others.map(nameOfPeer))}</p>
          <DeviceButton call={call} device="microphone" />
          {room === undefined ? (
            <Button kind="quiet" onPress={call.leave}>
              {words.leave}
            </Button>
          ) : (
            <a class="button button-quiet" href={room}>
              {words.toRoom}
            </a>
          )}
        </aside>
      )}
    </>
  );
}
