import type { BoardView } from '../../../shared/wire/board.ts';
import type { StageView } from '../../../shared/wire/views.ts';
import { textOf, type WordSheet } from '../../../shared/words/word-sheet.ts';
import { cardName, glassOf } from '../../glass/glasses.ts';
import { guestWords, words } from '../language.ts';
import { type BoardPage, boardPages, type WordCount, type WrittenNote } from './board-pages.ts';
import { useTurning } from './use-turning.ts';
import { useWordSheet } from './use-word-sheet.ts';

interface BoardSceneProps {
  readonly stage: StageView;
  readonly board: BoardView;
}

/** What people chose to share, one glass and one sense at a time, large. */
export function BoardScene({ stage, board }: BoardSceneProps) {
  const pages = boardPages(board);
  const { page: at, held } = useTurning(pages.length);
  const page = pages[at];
  const sheet = useWordSheet(page?.drink ?? stage.drink);
  if (page === undefined) {
    return (
      <div class="scene scene-word">
        <h1 class="scene-verb">{words.talk.title}</h1>
        <p class="scene-hint">{words.talk.none}</p>
      </div>
    );
  }
  return (
    <div class="scene board-page">
      <header class="board-head">
        <h1>{titleOf(stage, page)}</h1>
        {pages.length > 1 && (
          <p class="board-turn figures">
            <span class="visually-hidden">{words.talk.keys}</span>
            {words.talk.page(at + 1, pages.length)}
            {held && ` · ${words.talk.held}`}
          </p>
        )}
      </header>
      <Shown page={page} sheet={sheet} />
    </div>
  );
}

function glassName(stage: StageView, { pour, shows }: BoardPage): string {
  if (shows.part === 'odd-one-out') return words.place.odd;
  const glass = glassOf(stage, pour);
  if (glass === undefined) return words.place.aGlass;
  const name = cardName(guestWords, glass.card);
  return [words.place.glass(glass.position), ...(name === null ? [] : [name])].join(' · ');
}

function titleOf(stage: StageView, page: BoardPage) {
  const { part } = page.shows;
  const sense = part === 'odd-one-out' ? null : guestWords.fields[part];
  return (
    <>
      {sense !== null && <span class="board-sense">{sense}</span>}
      <span class="board-glass-name" dir="auto">
        {glassName(stage, page)}
      </span>
    </>
  );
}

interface ShownProps {
  readonly page: BoardPage;
  readonly sheet: WordSheet | null;
}

function Shown({ page: { shows }, sheet }: ShownProps) {
  switch (shows.part) {
    case 'odd-one-out':
      return (
        <div class="board-odd">
          <p class="scene-verb">{words.talk.found(shows.right, shows.of)}</p>
          {shows.guesses > 0 && <p class="scene-hint">{words.talk.guessed(shows.guesses)}</p>}
        </div>
      );
    default:
      return (
        <>
          {sheet !== null && shows.counts.length > 0 && (
            <ul class="board-counts">
              {shows.counts.map((count) =>
                shows.part === 'look' ? (
                  <ColourCount key={count.code} count={count} sheet={sheet} />
                ) : (
                  <li key={count.code}>
                    <span dir="auto">{textOf(sheet, count.code)}</span>
                    <People count={count.people} />
                  </li>
                ),
              )}
            </ul>
          )}
          {shows.notes.length > 0 && (
            <ul class={`board-cards board-cards-${shows.notes.length > 3 ? 'many' : 'few'}`}>
              {shows.notes.map((note) => (
                <Card key={note.name + note.sealed} note={note} />
              ))}
            </ul>
          )}
        </>
      );
  }
}

function People({ count }: { readonly count: number }) {
  return (
    <span class="board-people figures">
      <span aria-hidden="true">{count}</span>
      <span class="visually-hidden">{words.talk.said(count)}</span>
    </span>
  );
}

function ColourCount({ count, sheet }: { readonly count: WordCount; readonly sheet: WordSheet }) {
  const swatch = sheet.board.swatches.find(({ word }) => word === count.code);
  return (
    <li>
      {swatch && <span class="board-swatch" style={{ backgroundColor: swatch.hex }} aria-hidden="true" />}
      <span>{sheet.text.colours[count.code] ?? count.code}</span>
      <People count={count.people} />
    </li>
  );
}

function Card({ note: { name, remote, sealed, later } }: { readonly note: WrittenNote }) {
  return (
    <li class="board-card">
      <p class="board-who" dir="auto">
        {name}
        {remote && <span class="soft"> · {words.talk.remote}</span>}
      </p>
      {sealed !== '' && (
        <p class="board-said" dir="auto">
          {sealed}
        </p>
      )}
      {later !== '' && (
        <p class="board-said board-later" dir="auto">
          <span class="board-later-mark">{words.talk.later}:</span> {later}
        </p>
      )}
    </li>
  );
}
