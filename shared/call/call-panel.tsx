import { callWords as words } from '../language/en/call.ts';
import { Button } from '../ui/button.tsx';
import { Icon } from '../ui/icon.tsx';
import { camera } from '../ui/strokes.ts';
import type { Call } from './call.ts';
import { failureSentence, nameOfPeer, whyOut } from './call-words.ts';
import { DeviceButton } from './device-button.tsx';
import { PeerTile, useSpeaking } from './pictures.tsx';

/** A call with the follower that it goes by. */
export interface OpenCall {
  readonly call: Call;
  close(): void;
}

interface CallPanelProps {
  readonly call: Call;
}

/** Those at home, as the table sees them: on the host's tablet, and where the camera of the table stands. */
export function CallPanel({ call }: CallPanelProps) {
  return (
    <section class="stack-tight" aria-label={words.title}>
      {call.place.value.at === 'in' ? <InCall call={call} /> : <OutOfCall call={call} />}
    </section>
  );
}

function OutOfCall({ call }: CallPanelProps) {
  const place = call.place.value;
  const others = call.others.value;
  const why = whyOut(place);
  return (
    <>
      <Button busy={place.at === 'joining'} onPress={() => void call.join()}>
        <Icon of={camera} />
        {place.at === 'joining' ? words.joining : words.join}
      </Button>
      <p class="small soft" role={why === null ? undefined : 'alert'}>
        {why ?? (others.length === 0 ? words.nobody : words.inCall(others.map(nameOfPeer)))}
      </p>
    </>
  );
}

function InCall({ call }: CallPanelProps) {
  const speaking = useSpeaking(call);
  const others = call.others.value.filter(({ role }) => role !== 'screen');
  const off = call.role === 'host' && call.gates.value.microphone === 'nobody' ? words.notHeard : null;
  const said = failureSentence(call.media.failures.value) ?? off;
  return (
    <>
      <div class="row call-buttons">
        <DeviceButton call={call} device="microphone" />
        <DeviceButton call={call} device="camera" />
        <Button kind="quiet" onPress={call.leave}>
          {words.leave}
        </Button>
      </div>
      {others.length === 0 ? (
        <p class="small soft">{words.nobody}</p>
      ) : (
        <ul class="call-tiles">
          {others.map((peer) => (
            <li key={peer.peer}>
              <PeerTile call={call} peer={peer} speaks={speaking.has(peer.peer)} />
            </li>
          ))}
        </ul>
      )}
      {said !== null && (
        <p class="small call-warning" role="alert">
          {said}
        </p>
      )}
      {call.voiceOnly.value === 'poor-line' && (
        <>
          <p class="small call-warning" role="alert">
            {words.poorLineHere}
          </p>
          <Button kind="quiet" onPress={() => call.wishVoiceOnly(false)}>
            {words.pictures}
          </Button>
        </>
      )}
    </>
  );
}
