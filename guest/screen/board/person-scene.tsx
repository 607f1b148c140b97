import type { ComponentChild } from 'preact';
import { textFields } from '../../../shared/notes/entry.ts';
import { senseLines } from '../../../shared/talk/sense-lines.ts';
import type { BoardNote, BoardPour } from '../../../shared/wire/board.ts';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { guestWords, words } from '../language.ts';
import { glassName } from '../revealed-glasses.ts';
import { useVocabulary } from './use-vocabulary.ts';

interface PersonOnScreenProps {
  readonly stage: StageUnderWay;
  readonly pour: BoardPour;
  readonly note: BoardNote;
  /** Whose turn it is. */
  readonly turn: ComponentChild;
}

/** What one person wrote of one glass and put on the table: all senses on one page, for them to talk about. */
export function PersonOnScreen({ stage, pour, note, turn }: PersonOnScreenProps) {
  const vocabulary = useVocabulary(pour.drink ?? stage.drink, stage.terms);
  const rows = textFields.flatMap((field) => {
    const sealed = senseLines(note.sealed, field, vocabulary);
    const later = senseLines(note.addedLater, field, vocabulary);
    return sealed.length + later.length === 0 ? [] : [{ field, sealed, later }];
  });
  return (
    <div class="scene board-page">
      <header class="board-head">
        <h1>
          <span class="board-sense" dir="auto">
            {note.name}
          </span>
          <span class="board-glass-name" dir="auto">
            {glassName(stage, pour.pour)}
            {note.remote && ` · ${words.talk.remote}`}
          </span>
        </h1>
      </header>
      <dl class={`board-person board-person-${rows.length > 3 ? 'many' : 'few'}`}>
        {rows.map(({ field, sealed, later }) => (
          <div key={field}>
            <dt>{guestWords.fields[field]}</dt>
            <dd dir="auto">
              {sealed.join(' · ')}
              {later.length > 0 && (
                <span class="board-later">
                  {' '}
                  <span class="board-later-mark">{words.talk.later}:</span> {later.join(' · ')}
                </span>
              )}
            </dd>
          </div>
        ))}
      </dl>
      {turn}
    </div>
  );
}
