import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { TastingId } from '../core/ids.ts';
import { useLater } from '../shared/ui/later.ts';
import { createStatus } from '../shared/ui/status.ts';
import { StatusBar } from '../shared/ui/status-bar.tsx';
import { AskForLink } from './access/ask-for-link.tsx';
import type { KeyRing } from './access/host-keys.ts';
import { createHostApi } from './api.ts';
import type { House } from './app-context.ts';
import { eveningParts } from './evening-parts.ts';
import { HomePage } from './home/home-page.tsx';
import { words } from './language.ts';
import { OnItsWay } from './loading-page.tsx';
import { aheadPart, fetchTheRest, planPart, recapPart, tastingPart } from './parts.ts';
import { type Route, routeOf, type TastingRoute } from './route.ts';

interface AppProps {
  readonly ring: KeyRing;
  /** The browser refused to keep the key. */
  readonly notKept: boolean;
  /** Reads a key out of the address bar, if one was put there while the page is open. */
  readonly takeKey: () => boolean;
}

export function App({ ring, notKept, takeKey }: AppProps) {
  const route = useSignal<Route>(routeOf(window.location.hash));
  const wrongKey = useSignal(false);
  /** Counts the keys taken in, so that pages begin anew with a new one. */
  const keys = useSignal(0);
  const house = useMemo((): House => {
    const api = createHostApi({ houseKey: ring.house, keyFor: ring.keyFor });
    return {
      api,
      ring,
      status: createStatus(),
      askForLink: () => {
        wrongKey.value = true;
      },
    };
  }, [ring, wrongKey]);

  useEffect(fetchTheRest, []);
  useEffect(() => {
    if (notKept) house.status.say(words.key.notKept);
    const moved = (): void => {
      if (takeKey()) {
        wrongKey.value = false;
        keys.value += 1;
      }
      route.value = routeOf(window.location.hash);
    };
    window.addEventListener('hashchange', moved);
    return () => window.removeEventListener('hashchange', moved);
  }, [house, notKept, takeKey, route, wrongKey, keys]);

  const taken = (kept: boolean): void => {
    if (!kept) house.status.say(words.key.notKept);
    wrongKey.value = false;
    keys.value += 1;
  };
  // Read in any case, so that a key that comes in is noticed by a page that has none.
  const turn = keys.value;
  const locked = wrongKey.value || !holdsKeyFor(ring, route.value);
  return (
    <>
      <StatusBar status={house.status} closeLabel={words.close} />
      {locked ? (
        <AskForLink ring={ring} wrong={wrongKey.value} onTaken={taken} />
      ) : (
        <Page key={turn} route={route.value} house={house} />
      )}
    </>
  );
}

const holdsKeyFor = (ring: KeyRing, route: Route): boolean =>
  route.page === 'home'
    ? ring.house() !== undefined || ring.tastings().length > 0
    : ring.keyFor(route.tasting) !== undefined;

function Page({ route, house }: { readonly route: Route; readonly house: House }) {
  switch (route.page) {
    case 'home':
      return <HomePage house={house} />;
    case 'plan':
      return <Plan key={route.tasting} tasting={route.tasting} paste={route.paste} house={house} />;
    case 'recap':
      return <Recap key={route.tasting} tasting={route.tasting} house={house} />;
    case 'ahead':
      return <Ahead key={route.tasting} tasting={route.tasting} house={house} />;
    case 'doors':
    case 'room':
    case 'invite':
    case 'pouring':
    case 'print':
      return <Tasting key={route.tasting} route={route} house={house} />;
    default:
      return route satisfies never;
  }
}

interface OfTasting {
  readonly tasting: TastingId;
  readonly house: House;
}

function Plan(props: OfTasting & { readonly paste: boolean }) {
  const part = useLater(planPart);
  return part ? <part.PlanRoom {...props} /> : <OnItsWay part={planPart} />;
}

function Recap(props: OfTasting) {
  const part = useLater(recapPart);
  return part ? <part.RecapRoom {...props} /> : <OnItsWay part={recapPart} />;
}

function Ahead(props: OfTasting) {
  const part = useLater(aheadPart);
  return part ? <part.AheadPage {...props} /> : <OnItsWay part={aheadPart} />;
}

function Tasting(props: { readonly route: TastingRoute; readonly house: House }) {
  // At once, and not only when what it stands in has come.
  eveningParts[props.route.page].fetch();
  const part = useLater(tastingPart);
  return part ? <part.TastingPages {...props} /> : <OnItsWay part={tastingPart} />;
}
