import type { TastingId } from '../../../../core/ids.ts';
import type { Session } from '../../../../core/session/state.ts';
import { hostView, runningOrderView } from '../../../../core/session/views/host.ts';
import { seatView } from '../../../../core/session/views/seat.ts';
import { stageView } from '../../../../core/session/views/stage.ts';
import { boardOf, openBoards, unnamedNotes } from '../../../../server/live/board.ts';
import { unnamedKey } from '../../../../server/live/unnamed-pages.ts';
import type { Store } from '../../../../server/store/store.ts';
import type { BoardPour } from '../../../../shared/wire/board.ts';
import type { History } from '../history.ts';
import { inOrder } from '../in-order.ts';
import type { GuestDevice, HostDevice } from '../people.ts';
import { expect } from './log.ts';

/** [F2] Every stage that was ever shown is what the log says of that version. */
export function checkStages(history: History, after: readonly Session[]): void {
  for (const [version, shown] of history.stages) {
    const session = after[version];
    const right = session !== undefined && session.status !== 'unopened' ? stageView(session, version) : null;
    expect(history, 'F2', inOrder(right) === shown, `Version ${version} was shown as it never was.`);
  }
}

/** [F2] Once all is calm, every device shows what is so. */
export function checkLevel(
  history: History,
  session: Session,
  store: Store,
  tasting: TastingId,
  cast: { readonly hosts: readonly HostDevice[]; readonly guests: readonly GuestDevice[] },
): void {
  if (session.status === 'unopened') return;
  const boards = openBoards(session);
  const pages = store.notebooks.readPermitted(tasting, boards);
  const lots = new Map(pages.map((page) => [unnamedKey(page), unnamedKey(page)]));
  const board = inAnyLots(boardOf(session, pages, unnamedNotes(pages, lots)));
  const same = (name: string, what: string, shown: unknown, right: unknown): void => {
    const [is, ought] = [plain(shown), plain(right)];
    expect(history, 'F2', is === ought, `${name} shows the ${what} ${is} instead of ${ought}`);
  };
  for (const { device, follower } of cast.hosts) {
    same(device.name, 'room', follower.view.peek(), hostView(session, 0));
    same(device.name, 'running order', follower.runningOrder.peek(), runningOrderView(session, 0));
    same(device.name, 'board', inAnyLots(follower.board.peek()?.pours ?? []), board);
  }
  for (const { device, seat, follower } of cast.guests) {
    if (follower === undefined || session.seats[seat] === undefined) continue;
    same(device.name, 'stage', follower.stage.peek(), stageView(session, 0));
    same(device.name, 'seat', follower.seat.peek(), seatView(session, seat, 0));
    same(device.name, 'board', inAnyLots(follower.board.peek()?.pours ?? []), board);
  }
}

/** Without the number of events behind it, which may be older where nothing changed for this view. */
const plain = (view: unknown): string =>
  inOrder(JSON.parse(JSON.stringify(view, (key, value: unknown) => (key === 'version' ? undefined : value))));

/** Pages without a name lie where a lot has put them [Q9]. */
const inAnyLots = (pours: readonly BoardPour[]): BoardPour[] =>
  pours.map((pour) => {
    const unnamed = pour.notes.filter(({ seat }) => seat === null).map((note) => JSON.stringify(note));
    const named = pour.notes.filter(({ seat }) => seat !== null);
    return { ...pour, notes: [...named, ...unnamed.sort().map((note) => JSON.parse(note))] };
  });
