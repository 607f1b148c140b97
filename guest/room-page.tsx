import type { ComponentChildren } from 'preact';
import { useEffect, useMemo } from 'preact/hooks';
import { lazyComponent, lazyPart } from '../shared/page/lazy-part.ts';
import { Button } from '../shared/ui/button.tsx';
import { StatusBar } from '../shared/ui/status-bar.tsx';
import { keepAwake } from '../shared/ui/wake-lock.ts';
import { useGuessing } from './guess/guess-place.tsx';
import { words } from './language.ts';
import { LoadingLine } from './page/loading-line.tsx';
import { letNewVersionIn } from './page/offline-page.ts';
import { PageTitle } from './page/page-title.tsx';
import { FirstWords, fetchParts, keepsakePart, notebookPart, seatPart } from './parts/lazy-parts.ts';
import { LinkPage, linkNeedsPerson } from './room/link-page.tsx';
import { isCallOnly, useRoom } from './room/room.ts';
import { keptStage } from './room/stage-storage.ts';
import { Cautions } from './seat/cautions.tsx';
import { ownStage } from './stage/own-stage.ts';

interface RoomPageProps {
  /** With a sentence to be read at the door. */
  readonly onLeave: (said?: string) => void;
  readonly onEvenings: () => void;
}

/** Everything behind the door. */
export function RoomPage(props: RoomPageProps) {
  const room = useRoom();
  useEffect(keepAwake, []);
  glassPart.fetch();
  const AtHome = glassPart.now.value?.glassPages.AtHome;
  return (
    <>
      <StatusBar status={room.status} closeLabel={words.close} />
      <Devices />
      {AtHome && <AtHome />}
      {(AtHome && isCallOnly(room)) || <Inside {...props} />}
    </>
  );
}

/** What there is to say about the devices of this seat; most of the evening nothing. */
function Devices() {
  const { follower, seat } = useRoom();
  const view = follower.devices.value;
  if (view === null) return null;
  const asked = view.devices.some(({ number }) => number !== null);
  // The cautions come first, and nothing may push their button from under the finger.
  return asked || (seat.value.cautioned && !view.words) ? <DeviceNotices view={view} /> : null;
}

const DeviceNotices = lazyComponent(seatPart, ({ seatPages }) => seatPages.DeviceNotices);

function Inside({ onLeave, onEvenings }: RoomPageProps) {
  const { ask, follower, lock, page, seat, readCautions } = useRoom();
  const link = follower.link.value;
  const drink = follower.stage.value?.drink;
  const guesses = useGuessing();
  useEffect(() => {
    if (drink !== undefined) fetchParts(drink, guesses);
  }, [drink, guesses]);
  const shown = lock.shown.value;
  const finished = shown?.status === 'finished';
  useEffect(() => {
    if (finished) void letNewVersionIn();
  }, [finished]);
  const own = follower.seat.value;
  if (linkNeedsPerson(link)) return <LinkPage link={link} onDoor={() => onLeave()} />;
  const title = shown?.title || seat.value.title || words.app;
  // Who waits at the door is shown nothing of the room yet.
  if (own?.presence === 'waiting') return <Aside title={title} said={words.glass.waitingRoom} />;
  if (shown === null || own === null) return <WithoutRoom title={title} />;
  const stage = ownStage(shown, own);
  if (stage.status === 'under-way' && own.presence === 'left' && page.value.at !== 'notes') {
    return (
      <>
        <aside class="banner left-early">
          {words.glass.left} {words.glass.comeBack}
        </aside>
        <Home onGone={onLeave} onEvenings={onEvenings} />
      </>
    );
  }
  // [S5] Who came late agrees to the rules of the table as well before the glass in hand.
  const late = own.readsRulesFirst;
  if (stage.status === 'under-way' && (late || !seat.value.cautioned)) {
    return (
      <Cautions
        acceptLabel={late ? words.rules.accept : words.cautions.accept}
        late={late}
        onAccept={() => {
          readCautions();
          if (late) void ask({ type: 'AcceptGroundRules' });
        }}
      />
    );
  }
  const at = page.value;
  switch (at.at) {
    case 'room':
      return stage.status === 'finished' ? (
        <>
          <FirstWords />
          <Home onGone={onLeave} onEvenings={onEvenings} />
        </>
      ) : (
        <Glass stage={stage} own={own} />
      );
    case 'notes':
      return <Notes stage={stage} chosen={at.pour} />;
    case 'my-seat':
      return <OwnSeat own={own} />;
    case 'keepsake':
      return <Home onGone={onLeave} onEvenings={onEvenings} />;
    default:
      return at satisfies never;
  }
}

/** The room is not here yet, or cannot be reached: the own notes open without it. */
function WithoutRoom({ title }: { readonly title: string }) {
  const { follower, page, seat } = useRoom();
  const kept = useMemo(() => keptStage(seat.peek()), [seat]);
  const link = follower.link.value;
  const at = page.value;
  if (kept !== undefined && at.at === 'notes') {
    return <Notes stage={ownStage(kept.stage, kept.own)} chosen={at.pour} />;
  }
  if (link.status !== 'lost') {
    return (
      <Aside title={title} said={link.status === 'live' ? words.glass.starting : words.link.connecting} />
    );
  }
  return (
    <Aside title={title} said={words.link.lost}>
      {kept !== undefined && (
        <Button
          kind="primary"
          onPress={() => {
            page.value = { at: 'notes', pour: null };
          }}
        >
          {words.notes.open}
        </Button>
      )}
    </Aside>
  );
}

/** Fetched as soon as there is a seat, while the line to the room opens: that takes longer. */
const glassPart = lazyPart(() => import('./glass/glass-part.ts'));

const Glass = lazyComponent(glassPart, ({ glassPages }) => glassPages.GlassPage, LoadingLine);
const OwnSeat = lazyComponent(seatPart, ({ seatPages }) => seatPages.MySeat, LoadingLine);
const Notes = lazyComponent(notebookPart, ({ notebookPages }) => notebookPages.MyNotes, LoadingLine);
const Home = lazyComponent(keepsakePart, ({ keepsakePages }) => keepsakePages.KeepsakePage, LoadingLine);

interface AsideProps {
  readonly title: string;
  readonly said: string;
  readonly children?: ComponentChildren;
}

function Aside({ title, said, children }: AsideProps) {
  return (
    <main class="page">
      <PageTitle>{title}</PageTitle>
      <p class="lead">{said}</p>
      {children}
    </main>
  );
}
