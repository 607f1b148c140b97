import { Button } from '../../shared/ui/button.tsx';
import { wakeLockWorks } from '../../shared/ui/wake-lock.ts';
import { ConnectionStatus } from '../evening/connection-status.tsx';
import { DeviceReports } from '../evening/device-reports.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { JoinCode } from '../evening/join-code.tsx';
import { RoomScreens } from '../evening/room-screens.tsx';
import { homeWords, SeatTile } from '../evening/seat-tile.tsx';
import { tableOf } from '../evening/table.ts';
import { words } from '../language.ts';
import { words as planWords } from '../plan/words.ts';
import { hrefOf } from '../route.ts';
import { Preparations } from './preparations.tsx';

/** Before the evening: how guests come in, who is here, and what lies on each place. */
export function DoorsPage({ evening }: { readonly evening: EveningContext }) {
  const { stored, follower } = evening;
  const view = follower.view.value;
  const table = tableOf(view ?? { seats: [], expected: { room: 0, home: 0 } }, follower.presence.value);
  const { room, home } = table;
  const seated = [...table.asking, ...table.others];
  // Known before the room is, so that nothing jumps when it comes.
  const planned = view === null && stored.stage === 'planned';
  return (
    <main class="doors">
      <header class="doors-head">
        <h1>{stored.plan.title === '' ? words.untitled : stored.plan.title}</h1>
        <nav class="doors-nav" aria-label={words.doors.elsewhere}>
          <ConnectionStatus link={follower.link.value} hosts={follower.presence.value.hosts} />
          <a class="button button-quiet" href={hrefOf({ page: 'home' })}>
            {words.doors.toHome}
          </a>
          {planned && (
            <a class="button button-quiet" href={hrefOf({ page: 'plan', tasting: stored.tasting })}>
              {words.doors.toPlan}
            </a>
          )}
        </nav>
      </header>
      <div class="doors-body">
        <section class="doors-in" aria-label={words.doors.title}>
          <JoinCode stored={stored} />
          <RoomScreens evening={evening} />
        </section>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: taller than its place it scrolls, which a keyboard can do only where it may stop */}
        <section class="doors-table stack" aria-labelledby="at-table" tabIndex={0}>
          <h2 id="at-table">
            {words.doors.seats}
            {seated.length > 0 && (
              <span class="soft">
                {' '}
                · {words.table.counts.here(room.here + home.here, room.expected + home.expected)}
              </span>
            )}
          </h2>
          {seated.length === 0 ? (
            <p class="soft">
              {planned && words.doors.notOpen}
              {!planned &&
                (view === null ? words.loading : `${words.doors.nobody} ${words.doors.nobodyHint}`)}
            </p>
          ) : (
            <ul class="tiles">
              {seated.map((seat) => (
                <li key={seat.seat.id} class={seat.seat.remote ? 'at-home' : undefined}>
                  <SeatTile
                    seat={seat}
                    said={seat.seat.remote ? `${words.table.remote} · ${homeWords(seat, true)}` : undefined}
                  />
                </li>
              ))}
            </ul>
          )}
          {stored.plan.remoteGuests > 0 && (
            <DeviceReports
              api={evening.app.api}
              tasting={stored.tasting}
              expected={stored.plan.remoteGuests}
              early={planned}
            />
          )}
          {planned && (
            <div class="doors-errands">
              <a
                class="button button-quiet"
                href={hrefOf({ page: 'plan', tasting: stored.tasting, part: 'before' })}
              >
                {planWords.parts.before}
              </a>
            </div>
          )}
        </section>
        <Preparations drink={stored.plan.drink} />
        {/* A browser counts http on this machine itself as safe, and so it is. */}
        {!window.isSecureContext && <p class="small soft doors-screen">{words.doors.plainHttp}</p>}
        {!wakeLockWorks() && <p class="small soft doors-screen">{words.doors.screen}</p>}
      </div>
      <DoorsThumb evening={evening} />
    </main>
  );
}

/** The one thing to do next, at the thumb's side. */
function DoorsThumb({ evening }: { readonly evening: EveningContext }) {
  const { stored, follower, commands } = evening;
  const view = follower.view.value;
  if (view !== null) {
    return (
      <footer class="doors-thumb">
        <p>{view.status === 'finished' ? words.doors.isFinished : words.doors.isOpen}</p>
        <a
          class="button button-primary button-big"
          href={hrefOf({ page: view.status === 'finished' ? 'recap' : 'room', tasting: stored.tasting })}
        >
          {view.status === 'finished' ? words.home.recap : words.doors.toRoom}
        </a>
      </footer>
    );
  }
  if (stored.stage !== 'planned') {
    return (
      <footer class="doors-thumb">
        <p>{words.loading}</p>
      </footer>
    );
  }
  if (stored.plan.pours.length === 0) {
    return (
      <footer class="doors-thumb">
        <p>{words.doors.noPours}</p>
        <a class="button button-primary button-big" href={hrefOf({ page: 'plan', tasting: stored.tasting })}>
          {words.doors.addPours}
        </a>
      </footer>
    );
  }
  const busy = commands.waiting.value.has('OpenDoors');
  return (
    <footer class="doors-thumb">
      <p>{words.doors.notOpen}</p>
      <Button kind="primary" size="big" busy={busy} onPress={() => void commands.send({ type: 'OpenDoors' })}>
        {busy ? words.doors.opening : words.doors.open}
      </Button>
    </footer>
  );
}
