import { useEffect } from 'preact/hooks';
import type { HostView, RunningOrderView } from '../../core/session/views/host.ts';
import { keepAwake } from '../../shared/ui/wake-lock.ts';
import { ConnectionStatus } from '../evening/connection-status.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { words } from '../language.ts';
import { goTo } from '../route.ts';
import { ConductPage } from './conduct-page.tsx';
import { FinishedPage } from './finished-page.tsx';

/** The evening itself: under way, or over. */
export function RoomPage({ evening }: { readonly evening: EveningContext }) {
  const { follower, stored } = evening;
  const view: HostView | null = follower.view.value;
  const order: RunningOrderView | null = follower.runningOrder.value;
  useEffect(keepAwake, []);
  const live = follower.link.value.status === 'live';
  // Nothing is conducted before the doors are open; the view would be here by now.
  const unopened = live && view === null && stored.stage === 'planned';
  useEffect(() => {
    if (!unopened) return;
    const timer = setTimeout(() => goTo({ page: 'doors', tasting: stored.tasting }), 1500);
    return () => clearTimeout(timer);
  }, [unopened, stored]);

  if (view === null || order === null) {
    return (
      <main class="page">
        <ConnectionStatus link={follower.link.value} hosts={0} />
        <p class="soft">{unopened ? words.doors.notOpen : words.loading}</p>
      </main>
    );
  }
  switch (view.status) {
    case 'under-way':
      return <ConductPage evening={evening} view={view} order={order.cues} />;
    case 'finished':
      return <FinishedPage evening={evening} view={view} />;
    default:
      return view satisfies never;
  }
}
