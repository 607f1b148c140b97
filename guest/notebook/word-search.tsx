import { useState } from 'preact/hooks';
import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import type { WordField, WordMarks } from '../../shared/notes/entry.ts';
import { TextField } from '../../shared/ui/text-field.tsx';
import { searchWords } from '../../shared/words/search.ts';
import { codeFor, findable, textOf, type WordSheet, wordKey } from '../../shared/words/word-sheet.ts';
import { useWritingLock } from './use-writing-lock.ts';
import { senseOf } from './word-senses.ts';

interface WordSearchProps {
  readonly sheet: WordSheet;
  readonly field: WordField;
  readonly extraWords: readonly string[];
  readonly marks: WordMarks;
  readonly chip: (code: string) => preact.JSX.Element;
  readonly onAdd: (code: string) => void;
}

/** Finds words of the board whatever the spelling, and takes what is not there as an own word. */
export function WordSearch({ sheet, field, extraWords, marks, chip, onAdd }: WordSearchProps) {
  const [query, setQuery] = useState('');
  const [tooLong, setTooLong] = useState(false);
  const lock = useWritingLock();
  const found = searchWords(findable(sheet, senseOf(field), extraWords), query, 8);
  const asked = codeFor(sheet, query);
  // The same word with or without a capital is one.
  const code = Object.keys(marks).find((each) => asked && wordKey(each) === wordKey(asked)) ?? asked;
  const isNew = code !== undefined && !found.some((each) => each.code === code) && !(code in marks);
  const add = (): void => {
    if (query.trim() === '') return;
    setTooLong(code === undefined);
    if (code === undefined) return;
    if (!(code in marks)) onAdd(code);
    setQuery('');
  };
  return (
    <form
      class="stack-tight"
      onFocusIn={lock.enter}
      onFocusOut={lock.leave}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <TextField
        label={words.board.find}
        error={tooLong ? words.board.tooLong : undefined}
        value={query}
        onInput={(typed) => {
          lock.key();
          setTooLong(false);
          setQuery(typed);
        }}
        autocomplete="off"
      />
      {(found.length > 0 || isNew) && (
        <div class="row">
          {found.map((each) => chip(each.code))}
          {isNew && (
            <button type="submit" class="chip chip-place">
              <bdi>{words.board.add(textOf(sheet, code))}</bdi>
            </button>
          )}
        </div>
      )}
    </form>
  );
}
