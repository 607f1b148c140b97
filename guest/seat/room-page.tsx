import { useEffect } from 'preact/hooks';
import { StatusBar } from '../../shared/ui/status-bar.tsx';
import { keepAwake } from '../../shared/ui/wake-lock.ts';
import { ownStage } from '../glass/own-stage.ts';
import { RoomScreen } from '../glass/room-screen.tsx';
import { KeepsakePage } from '../keepsake/keepsake-page.tsx';
import { words } from '../language.ts';
import { MyNotes } from '../notebook/my-notes.tsx';
import { Cautions } from './cautions.tsx';
import { LinkPage, linkNeedsPerson } from './link-page.tsx';
import { MySeat } from './my-seat.tsx';
import { PageTitle } from './page-title.tsx';
import { useRoom } from './room.ts';

/** Everything behind the door. */
export function RoomPage({ onLeave }: { readonly onLeave: () => void }) {
  const room = useRoom();
  useEffect(keepAwake, []);
  return (
    <>
      <StatusBar status={room.status} closeLabel={words.close} />
      <Inside onLeave={onLeave} />
    </>
  );
}

function Inside({ onLeave }: { readonly onLeave: () => void }) {
  const { follower, lock, page, seat, readCautions } = useRoom();
  const link = follower.link.value;
  const shown = lock.shown.value;
  const own = follower.seat.value;
  if (linkNeedsPerson(link)) return <LinkPage link={link} onDoor={onLeave} />;
  const title = shown?.title || seat.value.title || words.app;
  // Who waits at the door is shown nothing of the room yet.
  if (own?.presence === 'waiting') return <Aside title={title}>{words.glass.waitingRoom}</Aside>;
  if (shown === null || own === null) {
    return (
      <Aside title={title}>{link.status === 'live' ? words.glass.starting : words.link.connecting}</Aside>
    );
  }
  const stage = ownStage(shown, own);
  if (stage.status === 'under-way' && own.presence === 'left' && page.value.at !== 'notes') {
    return (
      <>
        <aside class="banner left-early">
          {words.glass.left} {words.glass.comeBack}
        </aside>
        <KeepsakePage />
      </>
    );
  }
  if (stage.status === 'under-way' && !seat.value.cautioned) {
    return <Cautions acceptLabel={words.cautions.accept} onAccept={readCautions} />;
  }
  const at = page.value;
  switch (at.at) {
    case 'room':
      return stage.status === 'finished' ? <KeepsakePage /> : <RoomScreen stage={stage} own={own} />;
    case 'notes':
      return <MyNotes stage={stage} chosen={at.pour} />;
    case 'my-seat':
      return <MySeat own={own} />;
    case 'keepsake':
      return <KeepsakePage />;
    default:
      return at satisfies never;
  }
}

function Aside({ title, children }: { readonly title: string; readonly children: string }) {
  return (
    <main class="page">
      <PageTitle>{title}</PageTitle>
      <p class="lead">{children}</p>
    </main>
  );
}
