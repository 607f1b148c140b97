import type { PourId } from '../../core/ids.ts';
import { inTellingOrder, oddGlassOf } from '../../core/session/serving.ts';
import type { Evening, Session } from '../../core/session/state.ts';
import type { NoteValue } from '../../shared/notes/entry.ts';
import { addedSince, isBlank } from '../../shared/notes/value.ts';
import type { BoardEntry, BoardNote, BoardPour, BoardSpeaker } from '../../shared/wire/board.ts';
import type { PermittedPage, StoredEntry } from '../store/store.ts';

/** The pours whose board is open, in order of tasting. */
export const openBoards = (session: Session): PourId[] =>
  session.status === 'unopened'
    ? []
    : inTellingOrder(
        session.plan,
        [...session.plan.pours, ...session.plan.trials]
          .map((each) => each.id)
          .filter((id) => session.discussions[id]?.open === true),
      );

/** What guests chose to share of the open pours, in the order in which they sat down [Q1, Q2]. */
export function boardOf(session: Session, pages: readonly PermittedPage[]): BoardPour[] {
  if (session.status === 'unopened') return [];
  return openBoards(session).flatMap((pour) => {
    const discussion = session.discussions[pour];
    if (discussion === undefined) return [];
    const drink = session.plan.pours.find((each) => each.id === pour)?.drink ?? null;
    const ofPour = pages.filter((page) => page.pour === pour);
    return [{ pour, drink, sealedAt: discussion.sealedAt, notes: sharedNotes(session, pour, ofPour) }];
  });
}

/** Who may be asked to speak while a board is open; nobody's name is told before. */
export function tableOf(session: Session): BoardSpeaker[] {
  if (session.status === 'unopened' || openBoards(session).length === 0) return [];
  return Object.values(session.seats)
    .filter(({ presence }) => presence === 'seated')
    .map(({ id, name, remote }) => ({ seat: id, name, remote }));
}

/** Only what is shared with a name; what is merely counted never comes near the board. */
export function sharedNotes(evening: Evening, pour: PourId, pages: readonly PermittedPage[]): BoardNote[] {
  const trial = evening.plan.trials.find((each) => each.id === pour);
  const shared = new Map(pages.flatMap((page) => (page.sharing === 'shared' ? [[page.seat, page]] : [])));
  return Object.values(evening.seats).flatMap((seat) => {
    const page = shared.get(seat.id);
    if (page === undefined || (seat.presence !== 'seated' && seat.presence !== 'left')) return [];
    const sealed = page.entries.flatMap((entry) => entryOf(entry, sealedValue(entry)));
    const addedLater = page.entries.flatMap((entry) =>
      entryOf(entry, addedSince(entry.field, sealedValue(entry), entry.value)),
    );
    if (sealed.length === 0 && addedLater.length === 0) return [];
    const oddGlass = trial === undefined ? null : oddGlassOf(trial, seat);
    return [{ seat: seat.id, name: seat.name, remote: seat.remote, oddGlass, sealed, addedLater }];
  });
}

const entryOf = ({ field }: StoredEntry, value: NoteValue): BoardEntry[] =>
  isBlank(value) ? [] : [{ field, value }];

/** Null is an answer too, or rather that there was none. */
const sealedValue = (entry: StoredEntry): NoteValue =>
  entry.sealedValue === undefined ? entry.value : entry.sealedValue;
