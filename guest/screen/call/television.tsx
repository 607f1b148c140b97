import { useEffect, useMemo, useState } from 'preact/hooks';
import { PeerTile, useSpeaking, Voices } from '../../../shared/call/pictures.tsx';
import type { ScreenFollower } from '../../../shared/follower/screen-follower.ts';
import { callWords as words } from '../../../shared/language/en/call.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { openScreenCall } from './screen-call.ts';

/** Whether this browser plays sound without a tap. */
async function playsByItself(): Promise<boolean> {
  const context = new AudioContext();
  const running = context.state === 'running';
  await context.close();
  return running;
}

/**
 * The faces and voices of those at home for the whole room. It comes to the call by itself when somebody is in it, for it
 * sends nothing; where a browser keeps silent until somebody taps, it asks for that tap first.
 */
export function Television({ follower }: { readonly follower: ScreenFollower }) {
  const { call, close } = useMemo(() => openScreenCall(follower, 'screen'), [follower]);
  useEffect(() => close, [close]);
  const speaking = useSpeaking(call);
  const [silent, setSilent] = useState(false);
  const place = call.place.value;
  const others = call.others.value;
  const wanted = place.at === 'out' && place.why === null && others.length > 0;
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    void playsByItself().then((plays) => {
      if (gone) return;
      setSilent(!plays);
      if (plays) void call.join();
    });
    return () => {
      gone = true;
    };
  }, [wanted, call]);
  if (place.at !== 'in') {
    if (!wanted || !silent) return null;
    return (
      <aside class="screen-call" aria-label={words.title}>
        <Button onPress={() => void call.join()}>{words.soundOff}</Button>
      </aside>
    );
  }
  const atHome = others.filter(({ role }) => role === 'guest');
  const large = call.large.value;
  return (
    <>
      <Voices call={call} />
      {atHome.length > 0 && call.gates.value.pictures === 'shown' && (
        <aside class="screen-call" aria-label={words.title}>
          {atHome.map((peer) => (
            <PeerTile
              key={peer.peer}
              call={call}
              peer={peer}
              speaks={speaking.has(peer.peer)}
              large={peer.peer === large?.peer}
            />
          ))}
        </aside>
      )}
    </>
  );
}
