import type { ComponentChild } from 'preact';
import type { BoardPage, Shows } from '../../../shared/talk/board-pages.ts';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { textOf } from '../../../shared/words/word-sheet.ts';
import { guestWords, words } from '../language.ts';
import { glassName } from '../revealed-glasses.ts';
import { ColourStrip } from './colour-strip.tsx';
import { MarkSpreads } from './mark-spreads.tsx';
import { NoteCard } from './note-card.tsx';
import { PeopleCount } from './people-count.tsx';
import { useWordSheet } from './use-word-sheet.ts';

interface BoardOnScreenProps {
  readonly stage: StageUnderWay;
  readonly page: BoardPage;
  /** Whose turn it is. */
  readonly turn: ComponentChild;
}

/** What people chose to share, one glass and one sense at a time, large. */
export const BoardOnScreen = ({ stage, page, turn }: BoardOnScreenProps) => (
  <div class="scene board-page">
    <header class="board-head">
      <h1>
        <Title stage={stage} page={page} />
      </h1>
    </header>
    <Shown stage={stage} page={page} />
    {turn}
  </div>
);

function Title({
  stage,
  page: { pour, shows },
}: {
  readonly stage: StageUnderWay;
  readonly page: BoardPage;
}) {
  const title = titleOf(shows);
  const glass = shows.part === 'odd-one-out' || pour === null ? null : glassName(stage, pour);
  return (
    <>
      <span class={title.length > 12 ? 'board-sense board-sense-long' : 'board-sense'}>{title}</span>
      {glass !== null && (
        <span class="board-glass-name" dir="auto">
          {glass}
        </span>
      )}
    </>
  );
}

function titleOf({ part }: Shows): string {
  switch (part) {
    case 'odd-one-out':
      return words.place.odd;
    case 'places':
      return words.talk.places;
    case 'structure':
      return words.talk.structure;
    default:
      return guestWords.fields[part];
  }
}

function Shown({
  stage,
  page: { shows, drink },
}: {
  readonly stage: StageUnderWay;
  readonly page: BoardPage;
}) {
  const sheet = useWordSheet(drink ?? stage.drink, stage.terms);
  switch (shows.part) {
    case 'odd-one-out':
      return (
        <div class="board-odd">
          <p class="scene-verb">{words.talk.found(shows.right, shows.of)}</p>
          {shows.guesses > 0 && <p class="scene-hint">{words.talk.guessed(shows.guesses)}</p>}
        </div>
      );
    case 'places':
      return (
        <ol class="board-rows">
          {shows.glasses.map(({ pour, counts }) => (
            <li key={pour}>
              <span dir="auto">{glassName(stage, pour)}</span>
              <ul class="board-counts">
                {counts.map(({ place, people }) => (
                  <li key={place}>
                    <span>{words.talk.place(place)}</span>
                    <PeopleCount count={people} />
                  </li>
                ))}
              </ul>
            </li>
          ))}
        </ol>
      );
    case 'structure':
      return sheet === null ? null : <MarkSpreads marks={shows.marks} sheet={sheet} />;
    default:
      return (
        <>
          {sheet !== null && shows.counts.length > 0 && shows.part === 'look' && (
            <ColourStrip counts={shows.counts} sheet={sheet} />
          )}
          {sheet !== null && shows.counts.length > 0 && shows.part !== 'look' && (
            <ul class="board-counts">
              {shows.counts.map(({ code, people }) => (
                <li key={code}>
                  <span dir="auto">{textOf(sheet, code)}</span>
                  <PeopleCount count={people} />
                </li>
              ))}
            </ul>
          )}
          {shows.notes.length > 0 && (
            <ul class={`board-cards board-cards-${shows.notes.length > 3 ? 'many' : 'few'}`}>
              {shows.notes.map((note) => (
                <NoteCard key={note.name + note.sealed} note={note} />
              ))}
            </ul>
          )}
        </>
      );
  }
}
