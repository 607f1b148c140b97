import { useSignal } from '@preact/signals';
import { nanoid } from 'nanoid';
import { useCallback, useEffect, useMemo } from 'preact/hooks';
import { commandId } from '../core/ids.ts';
import { followAsHost, type HostFollower } from '../shared/follower/host-follower.ts';
import { watchForWake } from '../shared/follower/wake-watch.ts';
import { useLater } from '../shared/ui/later.ts';
import { Notice } from '../shared/ui/notice.tsx';
import type { StoredPlan } from '../shared/wire/http.ts';
import type { AppContext } from './app-context.ts';
import { ErrorNotice } from './error-notice.tsx';
import { type CommandsUnderWay, createCommandsUnderWay } from './evening/commands-under-way.ts';
import { doorsPart, invitePart, paperPart, pouringPart, roomPart } from './evening-parts.ts';
import { sentenceFor, words } from './language.ts';
import { LoadingPage } from './loading-page.tsx';
import type { PaperKind } from './paper-kind.ts';
import { hrefOf, type TastingRoute } from './route.ts';

/** One tasting as its pages share it: the plan as stored, the live room, and the way to ask it for something. */
export interface EveningContext {
  readonly app: AppContext;
  readonly stored: StoredPlan;
  readonly follower: HostFollower;
  readonly asking: CommandsUnderWay;
}

interface EveningPagesProps {
  readonly route: TastingRoute;
  readonly app: AppContext;
}

type Loaded =
  | { readonly is: 'loading' }
  | { readonly is: 'failed'; readonly sentence: string }
  | { readonly is: 'here'; readonly stored: StoredPlan };

export function EveningPages({ route, app }: EveningPagesProps) {
  const { tasting } = route;
  const loaded = useSignal<Loaded>({ is: 'loading' });
  const load = useCallback(async (): Promise<void> => {
    const answer = await app.api.plan(tasting);
    if (!answer.ok && answer.code === 'wrong-key') return app.askForLink();
    loaded.value = answer.ok
      ? { is: 'here', stored: answer.body }
      : { is: 'failed', sentence: sentenceFor(answer.code) };
  }, [app, tasting, loaded]);
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
          <ErrorNotice sentence={now.sentence} onRetry={() => void load()} />
          <a href={hrefOf({ page: 'home' })}>{words.doors.toHome}</a>
        </main>
      );
    case 'here':
      return <Followed route={route} stored={now.stored} app={app} />;
    default:
      return now satisfies never;
  }
}

interface FollowedProps {
  readonly route: TastingRoute;
  readonly stored: StoredPlan;
  readonly app: AppContext;
}

/** Holds the link to the room for as long as any page of this tasting is open. */
function Followed({ route, stored, app }: FollowedProps) {
  const key = app.keys.keyFor(stored.tasting) ?? '';
  const evening = useMemo((): EveningContext => {
    const follower = followAsHost({ tasting: stored.tasting, key, newId: () => commandId(nanoid()) });
    const asking = createCommandsUnderWay({
      send: follower.ask,
      onRefusal: (code) => app.status.say(code === 'no-answer' ? words.noAnswerToAsk : sentenceFor(code)),
    });
    return { app, stored, follower, asking };
  }, [app, stored, key]);
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
    if (link.status === 'refused' && link.code === 'wrong-key') app.askForLink();
  }, [link, app]);
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

interface OfEvening {
  readonly evening: EveningContext;
}

function Page({ route, evening }: { readonly route: TastingRoute; readonly evening: EveningContext }) {
  switch (route.page) {
    case 'doors':
      return <Doors evening={evening} />;
    case 'room':
      return <Room evening={evening} />;
    case 'invite':
      return <Invite evening={evening} />;
    case 'pouring':
      return <Pouring evening={evening} />;
    case 'print':
      return <Paper evening={evening} kind={route.kind} />;
    default:
      return route satisfies never;
  }
}

function Doors(props: OfEvening) {
  const part = useLater(doorsPart);
  return part ? <part.DoorsPage {...props} /> : <LoadingPage part={doorsPart} />;
}

function Room(props: OfEvening) {
  const part = useLater(roomPart);
  return part ? <part.RoomPage {...props} /> : <LoadingPage part={roomPart} />;
}

function Invite(props: OfEvening) {
  const part = useLater(invitePart);
  return part ? <part.InvitePage {...props} /> : <LoadingPage part={invitePart} />;
}

function Pouring(props: OfEvening) {
  const part = useLater(pouringPart);
  return part ? <part.PouringPage {...props} /> : <LoadingPage part={pouringPart} />;
}

function Paper(props: OfEvening & { readonly kind: PaperKind }) {
  const part = useLater(paperPart);
  return part ? <part.PaperPage {...props} /> : <LoadingPage part={paperPart} />;
}
