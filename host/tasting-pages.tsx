import { useSignal } from '@preact/signals';
import { nanoid } from 'nanoid';
import { useCallback, useEffect, useMemo } from 'preact/hooks';
import { commandId } from '../core/ids.ts';
import { followAsHost, type HostFollower } from '../shared/follower/host-follower.ts';
import { watchForWake } from '../shared/follower/wake.ts';
import { Notice } from '../shared/ui/notice.tsx';
import type { StoredPlan } from '../shared/wire/http.ts';
import { type Asking, createAsking } from './conduct/asking.ts';
import { RoomPage } from './conduct/room-page.tsx';
import type { House } from './house.ts';
import { InvitePage } from './invite/invite-page.tsx';
import { sentenceFor, words } from './language.ts';
import { PouringPage } from './pouring/pouring-page.tsx';
import { PaperPage } from './print/paper-page.tsx';
import { hrefOf, type TastingRoute } from './route.ts';
import { DoorsPage } from './set-up/doors-page.tsx';
import { Trouble } from './trouble.tsx';

/** One tasting as its pages share it: the plan as stored, the live room, and the way to ask it for something. */
export interface Evening {
  readonly house: House;
  readonly stored: StoredPlan;
  readonly follower: HostFollower;
  readonly asking: Asking;
}

interface TastingPagesProps {
  readonly route: TastingRoute;
  readonly house: House;
}

type Loaded =
  | { readonly is: 'loading' }
  | { readonly is: 'failed'; readonly sentence: string }
  | { readonly is: 'here'; readonly stored: StoredPlan };

export function TastingPages({ route, house }: TastingPagesProps) {
  const { tasting } = route;
  const loaded = useSignal<Loaded>({ is: 'loading' });
  const load = useCallback(async (): Promise<void> => {
    const answer = await house.api.plan(tasting);
    if (!answer.ok && answer.code === 'wrong-key') return house.askForLink();
    loaded.value = answer.ok
      ? { is: 'here', stored: answer.body }
      : { is: 'failed', sentence: sentenceFor(answer.code) };
  }, [house, tasting, loaded]);
  useEffect(() => void load(), [load]);

  const now = loaded.value;
  switch (now.is) {
    case 'loading':
      return (
        <main class="page">
          <p class="soft">{words.loading}</p>
        </main>
      );
    case 'failed':
      return (
        <main class="page page-narrow stack">
          <Trouble sentence={now.sentence} onRetry={() => void load()} />
          <a href={hrefOf({ page: 'home' })}>{words.doors.toHome}</a>
        </main>
      );
    case 'here':
      return <Followed route={route} stored={now.stored} house={house} />;
    default:
      return now satisfies never;
  }
}

interface FollowedProps {
  readonly route: TastingRoute;
  readonly stored: StoredPlan;
  readonly house: House;
}

/** Holds the link to the room for as long as any page of this tasting is open. */
function Followed({ route, stored, house }: FollowedProps) {
  const key = house.ring.keyFor(stored.tasting) ?? '';
  const evening = useMemo((): Evening => {
    const follower = followAsHost({ tasting: stored.tasting, key, newId: () => commandId(nanoid()) });
    const asking = createAsking({
      send: follower.ask,
      onRefusal: (code) => house.status.say(code === 'no-answer' ? words.noAnswerToAsk : sentenceFor(code)),
    });
    return { house, stored, follower, asking };
  }, [house, stored, key]);
  useEffect(() => {
    const stop = watchForWake(evening.follower.wake);
    return () => {
      stop();
      evening.follower.close();
    };
  }, [evening]);
  useEffect(() => {
    document.title = words.page(stored.plan.title);
  }, [stored]);

  const link = evening.follower.link.value;
  useEffect(() => {
    if (link.status === 'refused' && link.code === 'wrong-key') house.askForLink();
  }, [link, house]);
  if (link.status === 'refused' || link.status === 'dismissed') {
    return (
      <main class="page page-narrow stack">
        <Notice kind="caution">
          <p>{link.status === 'refused' ? sentenceFor(link.code) : words.link.dismissed[link.why]}</p>
        </Notice>
        <a class="button" href={hrefOf({ page: 'home' })}>
          {words.doors.toHome}
        </a>
      </main>
    );
  }
  return <Page route={route} evening={evening} />;
}

function Page({ route, evening }: { readonly route: TastingRoute; readonly evening: Evening }) {
  switch (route.page) {
    case 'doors':
      return <DoorsPage evening={evening} />;
    case 'room':
      return <RoomPage evening={evening} />;
    case 'invite':
      return <InvitePage evening={evening} />;
    case 'pouring':
      return <PouringPage evening={evening} />;
    case 'print':
      return <PaperPage evening={evening} kind={route.kind} />;
    default:
      return route satisfies never;
  }
}
