import type { PourId } from '../../core/ids.ts';
import type { Evening, Session } from '../../core/session/state.ts';
import type { BoardEntry, BoardNote, BoardPour } from '../../shared/wire/board.ts';
import type { SharedPage, StoredEntry } from '../store/store.ts';

/** The pours whose board is open, in order of tasting. */
export const openBoards = (session: Session): PourId[] =>
  session.status === 'unopened'
    ? []
    : session.plan.pours.map((pour) => pour.id).filter((pour) => session.discussions[pour]?.open === true);

/** What guests chose to share of the open pours, in the order in which they sat down [Q1, Q2]. */
export function boardOf(session: Session, pages: readonly SharedPage[]): BoardPour[] {
  if (session.status === 'unopened') return [];
  return openBoards(session).map((pour) => ({
    pour,
    notes: notesOf(
      session,
      pages.filter((page) => page.pour === pour),
    ),
  }));
}

function notesOf(evening: Evening, pages: readonly SharedPage[]): BoardNote[] {
  return Object.values(evening.seats).flatMap((seat) => {
    const page = pages.find((each) => each.seat === seat.id);
    if (page === undefined || (seat.presence !== 'seated' && seat.presence !== 'left')) return [];
    const sealed = page.entries.flatMap((entry) => entryOf(entry, sealedValue(entry)));
    const addedLater = page.entries.flatMap((entry) => entryOf(entry, laterValue(entry)));
    if (sealed.length === 0 && addedLater.length === 0) return [];
    return [{ seat: seat.id, name: seat.name, remote: seat.remote, sealed, addedLater }];
  });
}

const entryOf = ({ field }: StoredEntry, value: string): BoardEntry[] =>
  value.trim() === '' ? [] : [{ field, value }];

const sealedValue = (entry: StoredEntry): string => entry.sealedValue ?? entry.value;

/** What was written after the seal: only what was added where the old words still stand, otherwise all of it [Q3]. */
function laterValue({ value, sealedValue }: StoredEntry): string {
  if (sealedValue === undefined || sealedValue.includes(value)) return '';
  return value.startsWith(sealedValue) ? value.slice(sealedValue.length).trim() : value;
}
