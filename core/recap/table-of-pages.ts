import type { PourId } from '../ids.ts';
import type { PermittedAnswer } from '../panel/recap/permitted-answers.ts';
import type { Evening, Seat } from '../session/state.ts';
import type { PageMarks, PermittedPage } from './permitted-page.ts';
import { hideOwnWords } from './word-privacy.ts';

/** The pages of an evening that may be counted, guest by guest. */
export interface TableOfPages {
  /** Who could have answered: everybody who sat at the table and was not taken off it. */
  readonly guests: readonly Seat[];
  readonly pageOf: (seat: Seat, pour: PourId) => PermittedPage | undefined;
}

/** Everybody who sat at the table and was not taken off it. */
export const guestsOf = ({ seats }: Pick<Evening, 'seats'>): Seat[] =>
  Object.values(seats).filter(({ presence }) => presence === 'seated' || presence === 'left');

/** [Q1] Pages of a pour whose talk was never opened stay in their notebooks, whatever was chosen for them. */
export function tableOfPages(
  { plan, seats, discussions }: Pick<Evening, 'plan' | 'seats' | 'discussions'>,
  pages: readonly PermittedPage[],
): TableOfPages {
  const guests = guestsOf({ seats });
  const opened = pages.filter(
    ({ seat, pour }) => discussions[pour] !== undefined && guests.some(({ id }) => id === seat),
  );
  const bySeat = new Map(
    hideOwnWords(opened, plan.extraWords).map((page) => [`${page.seat} ${page.pour}`, page]),
  );
  return {
    guests,
    pageOf: (seat, pour) => bySeat.get(`${seat.id} ${pour}`),
  };
}

/**
 * One row for each guest with a permitted answer about any of these pours. The answer stands as it was sealed: what was
 * said before the talk is independent of the others; where it was blank then, it stands as it is now.
 */
export function rowsOf<Value>(
  table: TableOfPages,
  pours: readonly PourId[],
  mark: keyof PageMarks,
  read: (marks: PageMarks) => Value | null,
): PermittedAnswer<(Value | null)[]>[] {
  return rowsFrom(table, pours, mark, (pages) =>
    pages.map((page) => (page === undefined ? null : (read(page.sealed) ?? read(page.current)))),
  );
}

/** Places only mean something beside each other: a row is taken whole from the sealed pages, or whole from now. */
export const placesOf = (
  table: TableOfPages,
  pours: readonly PourId[],
): PermittedAnswer<(number | null)[]>[] =>
  rowsFrom(table, pours, 'place', (pages) => {
    const sealed = pages.map((page) => page?.sealed.place ?? null);
    return sealed.includes(null) ? pages.map((page) => page?.current.place ?? null) : sealed;
  });

function rowsFrom<Value>(
  { guests, pageOf }: TableOfPages,
  pours: readonly PourId[],
  mark: keyof PageMarks,
  read: (pages: readonly (PermittedPage | undefined)[]) => (Value | null)[],
): PermittedAnswer<(Value | null)[]>[] {
  return guests.flatMap((seat) => {
    const pages = pours.map((pour) => pageOf(seat, pour));
    if (pages.every((page) => page === undefined)) return [];
    const answer = read(pages);
    // Who permits something else has given no answer here.
    if (answer.every((value) => value === null)) return [];
    const byPart = answer.map((value, index) =>
      value === null ? null : (pages[index]?.consents[mark] ?? null),
    );
    const consent = byPart.includes('anonymous') ? 'anonymous' : 'shared';
    return [{ consent, byPart, answer }] as const;
  });
}
