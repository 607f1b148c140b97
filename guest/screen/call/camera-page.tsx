import { useEffect, useMemo } from 'preact/hooks';
import { CallPanel } from '../../../shared/call/call-panel.tsx';
import { Voices } from '../../../shared/call/pictures.tsx';
import type { ScreenFollower } from '../../../shared/follower/screen-follower.ts';
import { callWords as words } from '../../../shared/language/en/call.ts';
import { openScreenCall } from './screen-call.ts';

/** A laptop or a phone at the table that shows the table to those at home, instead of being a television. */
export function CameraPage({ follower }: { readonly follower: ScreenFollower }) {
  const { call, close } = useMemo(() => openScreenCall(follower, 'room'), [follower]);
  useEffect(() => close, [close]);
  return (
    <main class="screen-page screen-camera">
      <h1>{words.table}</h1>
      <Voices call={call} />
      <CallPanel call={call} />
      <p>{words.privacy}</p>
    </main>
  );
}
