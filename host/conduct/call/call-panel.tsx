import { useEffect, useMemo } from 'preact/hooks';
import type { Call } from '../../../shared/call/call.ts';
import { nameOfPeer, troubleSentence, whyOut } from '../../../shared/call/call-words.ts';
import { PeerTile, useSpeaking, Voices } from '../../../shared/call/pictures.tsx';
import type { HostFollower } from '../../../shared/follower/host-follower.ts';
import { callWords as words } from '../../../shared/language/en/call.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { camera, microphone } from '../../../shared/ui/strokes.ts';
import { openHostCall } from './host-call.ts';

/** Those at home, seen and heard at the table: in the table's panel, beside their seats. */
export function CallPanel({ follower }: { readonly follower: HostFollower }) {
  const { call, close } = useMemo(() => openHostCall(follower), [follower]);
  useEffect(() => close, [close]);
  return (
    <section class="table-call" aria-label={words.title}>
      {call.place.value.at === 'in' ? <InCall call={call} /> : <OutOfCall call={call} />}
    </section>
  );
}

function OutOfCall({ call }: { readonly call: Call }) {
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

function InCall({ call }: { readonly call: Call }) {
  const speaking = useSpeaking(call);
  const others = call.others.value.filter(({ role }) => role !== 'screen');
  const { microphone: to, camera: films, mayOpen } = call.gates.value;
  const trouble = troubleSentence(call.media.troubles.value);
  return (
    <>
      <Voices call={call} />
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
      {(trouble ?? (to === 'nobody' ? words.notHeard : null)) !== null && (
        <p class="small call-warning" role="alert">
          {trouble ?? words.notHeard}
        </p>
      )}
      <div class="call-buttons">
        <Button pressed={to !== 'nobody'} onPress={() => void call.turnOn('microphone', to === 'nobody')}>
          <Icon of={microphone} />
          {to === 'nobody' ? words.microphone.closed : words.microphone.open}
        </Button>
        <Button
          pressed={films}
          disabled={!films && !mayOpen.camera}
          onPress={() => void call.turnOn('camera', !films)}
        >
          <Icon of={camera} />
          {films ? words.camera.open : words.camera.closed}
        </Button>
        <Button kind="quiet" onPress={call.leave}>
          {words.leave}
        </Button>
      </div>
    </>
  );
}
