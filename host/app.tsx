import { signal, useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { createStatus } from '../shared/ui/status.ts';
import { StatusBar } from '../shared/ui/status-bar.tsx';
import type { HostKeys } from './access/host-keys.ts';
import { createHostApi } from './api.ts';
import type { AppContext } from './app-context.ts';
import type { EveningContext } from './evening/evening-context.ts';
import { AskForLink } from './home/ask-for-link.tsx';
import { HomePage } from './home/home-page.tsx';
import { words } from './language.ts';
import {
  DoorsPage,
  EveningPages,
  fetchEveningPage,
  fetchTheRest,
  HelperPage,
  InvitePage,
  PaperPage,
  PlanPage,
  PouringPage,
  PreTastingPage,
  RecapLoader,
  RoomPage,
} from './lazy-pages.tsx';
import { ofRoom, type Route, routeOf, type TastingRoute } from './route.ts';

interface AppProps {
  readonly keys: HostKeys;
  /** The browser refused to keep the key. */
  readonly notKept: boolean;
  /** Reads a key out of the address bar, if one was put there while the page is open. */
  readonly takeKey: () => boolean;
}

export function App({ keys, notKept, takeKey }: AppProps) {
  const route = useSignal<Route>(routeOf(window.location.hash));
  const wrongKey = useSignal(false);
  /** Counts the keys taken in, so that pages begin anew with a new one. */
  const turns = useSignal(0);
  const app = useMemo((): AppContext => {
    const api = createHostApi(keys);
    return {
      api,
      keys,
      status: createStatus(),
      calling: signal(null),
      askForLink: () => {
        wrongKey.value = true;
      },
    };
  }, [keys, wrongKey]);

  useEffect(fetchTheRest, []);
  useEffect(() => {
    if (notKept) app.status.say(words.key.notKept);
    const moved = (): void => {
      if (takeKey()) {
        wrongKey.value = false;
        turns.value += 1;
      }
      const next = routeOf(window.location.hash);
      if (!samePage(route.value, next)) app.status.turnPage();
      route.value = next;
    };
    window.addEventListener('hashchange', moved);
    return () => window.removeEventListener('hashchange', moved);
  }, [app, notKept, takeKey, route, wrongKey, turns]);

  const taken = (kept: boolean): void => {
    if (!kept) app.status.say(words.key.notKept);
    wrongKey.value = false;
    turns.value += 1;
  };
  // Read in any case, so that a key that comes in is noticed by a page that has none.
  const turn = turns.value;
  const locked = wrongKey.value || !holdsKeyFor(keys, route.value);
  return (
    <>
      <StatusBar status={app.status} closeLabel={words.close} />
      {locked ? (
        <AskForLink api={app.api} keys={keys} wrong={wrongKey.value} onTaken={taken} />
      ) : (
        <Page key={turn} route={route.value} app={app} />
      )}
    </>
  );
}

/** Parts of one plan are one page: what was done in one can be undone from another. */
const samePage = (one: Route, other: Route): boolean =>
  one.page === other.page &&
  (one.page === 'home' || (other.page !== 'home' && one.tasting === other.tasting));

const holdsKeyFor = (keys: HostKeys, route: Route): boolean =>
  route.page === 'home'
    ? keys.house() !== undefined || keys.tastings().length > 0
    : (route.page === 'help' ? keys.helperKeyFor(route.tasting) : keys.keyFor(route.tasting)) !== undefined;

interface PageProps {
  readonly route: Route;
  readonly app: AppContext;
}

function Page({ route, app }: PageProps) {
  const follows = ofRoom(route);
  if (follows) fetchEveningPage(route.page);
  // A call goes on while the host looks something up in the plan.
  else if (route.page === 'home' || app.calling.value !== route.tasting)
    return <PageAlone route={route} app={app} />;
  return (
    <EveningPages key={route.tasting} tasting={route.tasting} app={app} inRoom={route.page === 'room'}>
      {(evening) =>
        follows ? <EveningPage route={route} evening={evening} /> : <PageAlone route={route} app={app} />
      }
    </EveningPages>
  );
}

function PageAlone({
  route,
  app,
}: {
  readonly route: Exclude<Route, TastingRoute>;
  readonly app: AppContext;
}) {
  switch (route.page) {
    case 'home':
      return <HomePage app={app} />;
    case 'plan':
      return <PlanPage key={route.tasting} tasting={route.tasting} part={route.part} app={app} />;
    case 'recap':
      return <RecapLoader key={route.tasting} tasting={route.tasting} app={app} />;
    case 'help':
      return <HelperPage key={route.tasting} tasting={route.tasting} app={app} />;
    case 'ahead':
      return <PreTastingPage key={route.tasting} tasting={route.tasting} app={app} />;
    default:
      return route satisfies never;
  }
}

interface EveningPageProps {
  readonly route: TastingRoute;
  readonly evening: EveningContext;
}

function EveningPage({ route, evening }: EveningPageProps) {
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
