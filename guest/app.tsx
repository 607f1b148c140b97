import { useEffect, useMemo, useState } from 'preact/hooks';
import { lazyComponent } from '../shared/page/lazy-part.ts';
import { type KeptSeat, keepSeat, keptSeats } from '../shared/seats/kept-seats.ts';
import { entranceAt, type SeatPass, sameCode } from '../shared/seats/seat-link.ts';
import { InvitationPage } from './invitation/invitation-page.tsx';
import { words } from './language.ts';
import { seatOfTab, sitTab } from './page/device-storage.ts';
import { LoadingLine } from './page/loading-line.tsx';
import { keepsakePart, seatPart } from './parts/lazy-parts.ts';
import { openRoom, RoomContext } from './room/room.ts';
import { RoomPage } from './room-page.tsx';
import { JoinPage } from './seat/join-page.tsx';

type Place =
  | { readonly at: 'door'; readonly problem?: string }
  | { readonly at: 'invitation'; readonly code: string }
  | { readonly at: 'evenings' }
  | { readonly at: 'arriving'; readonly pass: SeatPass }
  | { readonly at: 'seat'; readonly seat: KeptSeat };

/** Where this page begins. A key in the address is taken in and the address cleaned before anything is shown. */
function begin(): Place {
  const entrance = entranceAt(window.location);
  switch (entrance.at) {
    case 'door':
      return { at: 'door' };
    case 'invitation': {
      const seat = keptSeats().find(({ code }) => sameCode(code ?? '', entrance.code));
      return seat === undefined ? { at: 'invitation', code: entrance.code } : { at: 'seat', seat };
    }
    case 'seat-link': {
      const { pass } = entrance;
      const known = keptSeats().find(({ key, cameBy }) => [key, cameBy].includes(pass.key));
      if (known !== undefined) return { at: 'seat', seat: known };
      history.replaceState(null, '', '/seat');
      return { at: 'arriving', pass };
    }
    case 'broken-link':
      history.replaceState(null, '', '/');
      return { at: 'door', problem: words.door.brokenLink };
    case 'own-seat': {
      const seat = seatOfTab() ?? keptSeats()[0];
      return seat === undefined ? { at: 'door', problem: words.door.noSeat } : { at: 'seat', seat };
    }
    default:
      return entrance satisfies never;
  }
}

export function App() {
  const [place, setPlace] = useState(begin);
  useEffect(() => {
    const again = () => setPlace(begin());
    window.addEventListener('popstate', again);
    window.addEventListener('hashchange', again);
    return () => {
      window.removeEventListener('popstate', again);
      window.removeEventListener('hashchange', again);
    };
  }, []);

  const toDoor = (problem?: string) => {
    history.replaceState(null, '', '/');
    setPlace(problem === undefined ? { at: 'door' } : { at: 'door', problem });
  };
  const toEvenings = () => {
    history.replaceState(null, '', '/');
    setPlace({ at: 'evenings' });
  };
  switch (place.at) {
    case 'door':
      return (
        <JoinPage
          problem={place.problem}
          onCode={(code) => {
            history.pushState(null, '', `/j/${encodeURIComponent(code)}`);
            setPlace({ at: 'invitation', code });
          }}
          onSeat={(seat) => setPlace({ at: 'seat', seat })}
          onEvenings={toEvenings}
        />
      );
    case 'evenings':
      return <Evenings onSeat={(seat) => setPlace({ at: 'seat', seat })} onBack={() => toDoor()} />;
    case 'invitation':
      return (
        <InvitationPage
          code={place.code}
          onOtherCode={() => toDoor()}
          onSeat={(seat) => setPlace({ at: 'seat', seat })}
        />
      );
    case 'arriving':
      return (
        <Arriving pass={place.pass} onSeat={(seat) => setPlace({ at: 'seat', seat })} onRefused={toDoor} />
      );
    case 'seat':
      return <Seated key={place.seat.key} seat={place.seat} onLeave={toDoor} onEvenings={toEvenings} />;
    default:
      return place satisfies never;
  }
}

const Evenings = lazyComponent(keepsakePart, ({ keepsakePages }) => keepsakePages.EveningsPage, LoadingLine);

const Arriving = lazyComponent(seatPart, ({ seatPages }) => seatPages.ArrivalPage, LoadingLine);

interface SeatedProps {
  readonly seat: KeptSeat;
  /** With a sentence to be read at the door. */
  readonly onLeave: (said?: string) => void;
  readonly onEvenings: () => void;
}

function Seated({ seat, onLeave, onEvenings }: SeatedProps) {
  const room = useMemo(() => {
    keepSeat(seat);
    sitTab(seat);
    return openRoom(seat);
  }, [seat]);
  useEffect(() => room.close, [room]);
  return (
    <RoomContext.Provider value={room}>
      <RoomPage onLeave={onLeave} onEvenings={onEvenings} />
    </RoomContext.Provider>
  );
}
