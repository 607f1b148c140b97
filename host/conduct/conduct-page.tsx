import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Cue } from '../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../core/session/views/host.ts';
import { lazyComponent } from '../../shared/page/lazy-part.ts';
import { nameOf } from '../evening/cue-words.ts';
import type { EveningContext } from '../evening/evening-context.ts';
import { tableOf } from '../evening/table.ts';
import { words } from '../language.ts';
import { createHostActions } from './actions/host-actions.ts';
import { primaryAction } from './actions/primary-action.ts';
import { useKeys } from './actions/use-keys.ts';
import { useSettling } from './actions/use-settling.ts';
import { callPart } from './call/call-part.ts';
import type { Drawer } from './drawer.ts';
import { Drawers } from './drawers/drawers.tsx';
import { NowPanel } from './now/now-panel.tsx';
import { ThumbControls } from './now/thumb-controls.tsx';
import { OrderList } from './order/order-list.tsx';
import { RoomHead } from './pace/room-head.tsx';
import { AskingSeats, TablePanel } from './table/table-panel.tsx';
import { Toolbar } from './toolbar.tsx';

interface ConductPageProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
}

/** The conducting page: the evening, what the room does now, the table, and the big button under the thumb. */
export function ConductPage({ evening, view, order }: ConductPageProps) {
  const { follower, commands, app } = evening;
  const drawer = useSignal<Drawer | null>(null);
  const actions = useMemo(
    () =>
      createHostActions({
        commands,
        status: app.status,
        onFinish: () => {
          drawer.value = { shows: 'finish' };
        },
      }),
    [commands, app, drawer],
  );
  const cue = order.find(({ id }) => id === view.cue);
  const step = primaryAction(view, cue);
  const settling = useSettling([view.cue, view.toTell[0]].join(' '));
  const table = tableOf(view, follower.presence.value);
  const name = cue === undefined ? '' : nameOf(cue, view.pours);

  useKeys((ask) => {
    // A drawer that lies over the page takes the keys; only Escape, which is the browser's, closes it.
    if (drawer.peek() !== null) return;
    switch (ask) {
      case 'next':
        return settling() ? undefined : actions.takeStep(step);
      case 'back':
        return view.previous === null ? undefined : actions.back(view.cue);
      case 'hold':
        return actions.holdOrResume(view.clock);
      case 'keys':
        drawer.value = { shows: 'keys' };
        return undefined;
      default:
        return ask satisfies never;
    }
  });
  useEffect(() => {
    // What can still be undone stays on the screen; the words for the ear would take its place.
    const undoable = app.status.message.peek()?.action !== undefined;
    if (name !== '' && !undoable) app.status.say(words.room.moved(name), { unseen: true });
    // Said once per cue, not again when a glass is dropped and the counting changes.
  }, [view.cue, app]);

  const open = (next: Drawer): void => {
    drawer.value = next;
  };
  return (
    <main class="room">
      <RoomHead evening={evening} view={view} order={order} onOpen={open} />
      <div class="room-asking">
        <AskingSeats table={table} onOpen={open} actions={actions} />
      </div>
      <NowPanel
        evening={evening}
        view={view}
        cue={cue}
        order={order}
        step={step}
        table={table}
        actions={actions}
      />
      <Toolbar screenAsks={follower.presence.value.screensAsking.length > 0} onOpen={open} />
      <OrderList view={view} order={order} now={follower.clock.now} onOpen={open} />
      <TablePanel
        table={table}
        cue={cue}
        away={follower.presence.value.away}
        now={follower.clock.now}
        view={view}
        onOpen={open}
        actions={actions}
      >
        {(view.expected.home > 0 || table.home.seated > 0) && <CallPanel evening={evening} />}
      </TablePanel>
      <ThumbControls
        view={view}
        order={order}
        step={step}
        waiting={commands.waiting}
        settling={settling}
        actions={actions}
      />
      <Drawers
        evening={evening}
        view={view}
        order={order}
        table={table}
        drawer={drawer.value}
        actions={actions}
        onOpen={open}
        onClose={() => {
          drawer.value = null;
        }}
      />
    </main>
  );
}

const CallPanel = lazyComponent(callPart, ({ CallPanel: Panel }) => Panel);
