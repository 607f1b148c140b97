import type { ToldGuesses } from '../follower/guesses.ts';
import type { BoardNote, BoardPour, BoardView } from '../wire/board.ts';
import type { RoomGuesses } from '../wire/guesses.ts';
import type { CueKind, PourId, ToldResult } from '../wire/views.ts';
import { type BoardPage, boardPages } from './board-pages.ts';
import { hasSenses } from './sense-lines.ts';
import type { Turn } from './speaking-order.ts';

/** One thing that the room's screens can be given to. Its id is all that the host's tablet says of it. */
export interface ScreenPage {
  readonly id: string;
  /** The glass that it is about; null where it is about several. */
  readonly pour: PourId | null;
  /** The guest whose page it is, of those who shared with a name. */
  readonly seat: BoardNote['seat'] | null;
  readonly shows: ShownPage;
}

type ShownPage =
  /** A pour by its name: label, facts, story. */
  | { readonly is: 'card'; readonly pour: PourId }
  /** All that have been named, side by side. */
  | { readonly is: 'names' }
  /** What the room made of its glasses, as it was told. */
  | { readonly is: 'result'; readonly told: ToldResult }
  /** What the room guessed of a pour, beside what it is. */
  | { readonly is: 'guesses'; readonly guesses: RoomGuesses }
  | { readonly is: 'board'; readonly page: BoardPage }
  | { readonly is: 'person'; readonly pour: BoardPour; readonly note: BoardNote };

/** What pages can be made of, as screens and the host's tablet know it. */
export interface ScreenSource {
  readonly cue: { readonly kind: CueKind; readonly pours: readonly PourId[] };
  /** Pours that everybody may know by name, in the order in which they are listed. */
  readonly named: readonly PourId[];
  readonly board: Pick<BoardView, 'pours'> | null;
  readonly results: readonly ToldResult[];
  readonly guesses: ToldGuesses;
}

/**
 * The pages of this moment, in the order in which the host turns them. At the names they begin with the cards of what has
 * been told; while a talk is open they hold what is on the table, glass by glass, how the glasses were placed, and the
 * page of each person for each glass. Further pages of a glass belong behind its card.
 */
export function screenPages({ cue, named, board, results, guesses }: ScreenSource): ScreenPage[] {
  const open = board?.pours ?? [];
  const names = cue.kind === 'reveal';
  const told = named.filter((pour) =>
    names ? cue.pours.includes(pour) : open.some((each) => each.pour === pour),
  );
  const pages = boardPages({ pours: open });
  const of = (pour: PourId | null) => pages.filter((page) => page.pour === pour).map(fromBoard);
  const cards = told.flatMap((pour) => [
    cardPage(pour),
    ...guessesPages(guesses.get(pour)),
    ...(names ? of(pour) : []),
  ]);
  const overview = names && told.length > 1 ? [overviewPage] : [];
  const talked = open
    .filter(({ pour }) => !names || !told.includes(pour))
    .flatMap(({ pour }) => [...(names ? [] : cards.filter((card) => card.pour === pour)), ...of(pour)]);
  return [
    ...(names ? [...cards, ...overview] : []),
    ...talked,
    ...of(null),
    ...results.map(resultPage),
    ...personPages(open),
  ];
}

const cardPage = (pour: PourId): ScreenPage => ({
  id: `card/${pour}`,
  pour,
  seat: null,
  shows: { is: 'card', pour },
});

/** So many facts are read side by side from across a room. */
const factsAtOnce = 3;

/** Fewer than three let theirs count: there is nothing to draw. */
const guessesPages = (guesses: RoomGuesses | undefined): ScreenPage[] =>
  (guesses?.facts ?? []).flatMap(({ fact }, at, all): ScreenPage[] =>
    guesses === undefined || at % factsAtOnce > 0
      ? []
      : [
          {
            id: `guesses/${guesses.pour}/${fact}`,
            pour: guesses.pour,
            seat: null,
            shows: { is: 'guesses', guesses: { ...guesses, facts: all.slice(at, at + factsAtOnce) } },
          },
        ],
  );

const resultPage = (told: ToldResult): ScreenPage => ({
  id: `result/${told.cue}`,
  pour: null,
  seat: null,
  shows: { is: 'result', told },
});

const overviewPage: ScreenPage = { id: 'names', pour: null, seat: null, shows: { is: 'names' } };

const fromBoard = (page: BoardPage): ScreenPage => ({
  id: page.id,
  pour: page.pour,
  seat: null,
  shows: { is: 'board', page },
});

const personPages = (open: readonly BoardPour[]): ScreenPage[] =>
  open.flatMap((pour) =>
    // A page without a name belongs to nobody here [Q9]; it stands among what is on the table.
    pour.notes.flatMap((note): ScreenPage[] =>
      note.seat === null || !hasSenses(note)
        ? []
        : [
            {
              id: `person/${pour.pour}/${note.seat}`,
              pour: pour.pour,
              seat: note.seat,
              shows: { is: 'person', pour, note },
            },
          ],
    ),
  );

/** What a screen needs besides, to choose by itself. */
export interface ScreenMoment {
  readonly cue: { readonly id: string; readonly kind: CueKind };
  readonly justTold: readonly PourId[];
  readonly turn: Turn | null;
}

/**
 * The page that shows while the host has chosen none: at the names what was told last, in a talk the page of whoever
 * speaks about now, for the glass of that round. Nothing turns by a timer of its own.
 * @returns null where there is none: nothing has been told or shared yet
 */
export function pageByItself(
  pages: readonly ScreenPage[],
  { cue, justTold, turn }: ScreenMoment,
): ScreenPage | null {
  const own = pages.find(({ shows }) => shows.is === 'result' && shows.told.cue === cue.id);
  if (own !== undefined) return own;
  if (cue.kind === 'reveal') {
    const cards = pages.filter(({ shows }) => shows.is === 'card');
    const last = cards.filter(({ pour }) => pour !== null && justTold.includes(pour));
    const [only] = last.length === 1 || cards.length === 1 ? [last[0] ?? cards[0]] : [];
    return only ?? pages.find(({ shows }) => shows.is === 'names') ?? null;
  }
  const shared = pages.filter(({ shows }) => shows.is === 'board' || shows.is === 'person');
  const ofGlass = (page: ScreenPage): boolean => page.pour === turn?.glass;
  return (
    pages.find((page) => page.seat === turn?.speaking.seat && ofGlass(page)) ??
    shared.find(ofGlass) ??
    shared[0] ??
    null
  );
}

/** The page that is shown: the host's, where it is still there, or the one that comes by itself. */
export const pageShown = (
  pages: readonly ScreenPage[],
  chosen: string | null,
  byItself: ScreenPage | null,
): ScreenPage | null => pages.find(({ id }) => id === chosen) ?? byItself;
