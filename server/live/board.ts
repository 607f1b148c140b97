import type { PourId, SeatId } from '../../core/ids.ts';
import { inTellingOrder, oddGlassOf } from '../../core/session/serving.ts';
import type { Evening, Session } from '../../core/session/state.ts';
import type { NoteValue } from '../../shared/notes/entry.ts';
import { addedSince, isBlank } from '../../shared/notes/value.ts';
import type { BoardEntry, BoardNote, BoardPour, BoardSpeaker } from '../../shared/wire/board.ts';
import type { TalkView } from '../../shared/wire/protocol.ts';
import type { PermittedPage, StoredEntry } from '../store/store.ts';
import { unnamedKey } from './unnamed-pages.ts';

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

/**
 * What guests chose to put on the table of the open pours: those with a name in the order in which they sat down, then those
 * without [Q1, Q2].
 */
export function boardOf(
  session: Session,
  pages: readonly PermittedPage[],
  unnamed: readonly UnnamedNote[] = [],
): BoardPour[] {
  if (session.status === 'unopened') return [];
  return openBoards(session).flatMap((pour) => {
    const discussion = session.discussions[pour];
    if (discussion === undefined) return [];
    const drink = session.plan.pours.find((each) => each.id === pour)?.drink ?? null;
    const ofPour = pages.filter((page) => page.pour === pour);
    const nameless = unnamed.flatMap((each) => (each.pour === pour ? each.note : []));
    const notes = [...namedNotes(session, pour, ofPour), ...nameless];
    return [{ pour, drink, sealedAt: discussion.sealedAt, notes }];
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
export function namedNotes(evening: Evening, pour: PourId, pages: readonly PermittedPage[]): NamedNote[] {
  const trial = evening.plan.trials.find((each) => each.id === pour);
  const bySeat = new Map(pages.map((page) => [page.seat, page]));
  return Object.values(evening.seats).flatMap((seat) => {
    const page = bySeat.get(seat.id);
    if (page === undefined || (seat.presence !== 'seated' && seat.presence !== 'left')) return [];
    const entries = page.entries.filter(({ field }) => page.permits[field] === 'named');
    const sealed = entries.flatMap((entry) => entryOf(entry, sealedValue(entry)));
    const addedLater = entries.flatMap((entry) =>
      entryOf(entry, addedSince(entry.field, sealedValue(entry), entry.value)),
    );
    if (sealed.length === 0 && addedLater.length === 0) return [];
    const oddGlass = trial === undefined ? null : oddGlassOf(trial, seat);
    return [{ seat: seat.id, name: seat.name, remote: seat.remote, oddGlass, sealed, addedLater }];
  });
}

export type NamedNote = BoardNote & { readonly seat: SeatId };

export interface UnnamedNote {
  readonly pour: PourId;
  readonly lot: string;
  readonly note: BoardNote;
}

/**
 * [Q9] In the order of their lots. Only what stood there when the talk opened: a page that grew while somebody typed would
 * have a name. They also stay when their guest is taken off the table, or the host could find out whose they are.
 *
 * @param lots by `unnamedKey`; a page without one has to wait
 */
export const unnamedNotes = (
  pages: readonly PermittedPage[],
  lots: ReadonlyMap<string, string>,
): UnnamedNote[] =>
  pages
    .flatMap((page): UnnamedNote[] => {
      const lot = lots.get(unnamedKey(page));
      const sealed = page.entries
        .flatMap((entry) =>
          page.permits[entry.field] === 'unnamed' ? entryOf(entry, sealedValue(entry)) : [],
        )
        .sort((one, other) => (one.field < other.field ? -1 : 1));
      if (lot === undefined || sealed.length === 0) return [];
      const nobody = { seat: null, name: '', remote: false, oddGlass: null };
      return [{ pour: page.pour, lot, note: { ...nobody, sealed, addedLater: [] } }];
    })
    .sort((one, other) => (one.lot < other.lot ? -1 : 1));

/** How many of those who sit at the table have said of every glass that is talked about what goes there. */
export function talkOf(session: Session, pages: readonly PermittedPage[]): TalkView | null {
  if (session.status === 'unopened') return null;
  const glasses = openBoards(session).filter((pour) => session.plan.pours.some(({ id }) => id === pour));
  if (glasses.length === 0) return null;
  const answered = new Set(
    pages.flatMap(({ seat, pour, consents }) => (consents.page === undefined ? [] : `${pour} ${seat}`)),
  );
  const seated = Object.values(session.seats).filter(({ presence }) => presence === 'seated');
  const chosen = seated.filter(({ id }) => glasses.every((pour) => answered.has(`${pour} ${id}`)));
  return { chosen: chosen.length, of: seated.length };
}

/** The pages that are given without a name. */
export const unnamedPages = (pages: readonly PermittedPage[]): PermittedPage[] =>
  pages.filter(({ permits }) => Object.values(permits).includes('unnamed'));

/** A guess is no part of a page that is shared: whether it counts is asked by itself [Q12]. */
const entryOf = ({ field }: StoredEntry, value: NoteValue): BoardEntry[] =>
  isBlank(value) || field === 'guess' ? [] : [{ field, value }];

/** Null is an answer too, or rather that there was none. */
const sealedValue = (entry: StoredEntry): NoteValue =>
  entry.sealedValue === undefined ? entry.value : entry.sealedValue;
