import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import { mostMarks, type WordField, type WordMarks } from '../../shared/notes/entry.ts';
import type { PourId } from '../../shared/wire/views.ts';
import { tapAgain } from '../../shared/words/closing.ts';
import { codeFor, textOf, type WordSheet, wordKey } from '../../shared/words/word-sheet.ts';
import { useRoom } from '../room/room.ts';
import { closingText } from '../stage/word-sheets.ts';
import { WordChip } from './word-chip.tsx';
import { WordSearch } from './word-search.tsx';
import { senseOf } from './word-senses.ts';

interface WordPickProps {
  readonly pour: PourId;
  readonly field: WordField;
  readonly sheet: WordSheet;
  /** The host's additions for this evening. */
  readonly extraWords: readonly string[];
}

/** Own words on top, then the places where one may have met a smell, each unfolding into its words. */
export function WordPick({ pour, field, sheet, extraWords }: WordPickProps) {
  const { follower, status } = useRoom();
  const marks = follower.notebook.read(pour, field);
  const [full, setFull] = useState(false);

  const tap = (code: string): void => {
    const strength = tapAgain(marks[code]);
    const isFull = marks[code] === undefined && Object.keys(marks).length >= mostMarks;
    setFull(isFull);
    if (isFull) return;
    const { [code]: _, ...others } = marks;
    const next: WordMarks =
      strength === undefined
        ? others
        : code in marks
          ? { ...marks, [code]: strength }
          : { ...others, [code]: strength };
    follower.notebook.write(pour, field, next);
    const text = textOf(sheet, code);
    const said = strength && (closingText.now.peek()?.strengths[strength] ?? strength);
    status.say(said === undefined ? words.board.laidDown(text) : words.board.marked(text, said), {
      unseen: true,
    });
  };
  const chip = (code: string) => (
    <WordChip key={code} text={textOf(sheet, code)} strength={marks[code]} onTap={() => tap(code)} />
  );
  const title = words.board.titles[field];
  const extras = extraWords.flatMap((written) => {
    const code = codeFor(sheet, written);
    return Object.keys(marks).find((each) => code && wordKey(each) === wordKey(code)) ?? code ?? [];
  });
  return (
    <section class="stack-tight" aria-label={title}>
      <h2>{title}</h2>
      {Object.keys(marks).length > 0 && (
        <fieldset class="row chips-yours" aria-label={words.board.yours}>
          {Object.keys(marks).map(chip)}
        </fieldset>
      )}
      {full && <p class="field-error">{words.board.full}</p>}
      <Places
        key={field}
        places={[
          ...(extras.length === 0 ? [] : [{ key: ':host', name: words.board.fromHost, codes: extras }]),
          ...sheet.board.senses[senseOf(field)].map((family) => ({
            key: family,
            name: sheet.text.families[family] ?? family,
            codes: sheet.board.families[family] ?? [],
          })),
        ]}
        chip={chip}
      />
      <p class="soft small">{words.board.hint}</p>
      <WordSearch sheet={sheet} field={field} extraWords={extraWords} chip={chip} onAdd={tap} marks={marks} />
    </section>
  );
}

interface Place {
  readonly key: string;
  readonly name: string;
  readonly codes: readonly string[];
}

interface PlacesProps {
  readonly places: readonly Place[];
  readonly chip: (code: string) => preact.JSX.Element;
}

/** One level at a time, so that a small screen holds it: the places, or the words of the open one. */
function Places({ places, chip }: PlacesProps) {
  const [open, setOpen] = useState<string | null>(null);
  const box = useRef<HTMLFieldSetElement>(null);
  const came = useRef<string | null>(null);
  const place = places.find(({ key }) => key === open);
  // The button that was tapped is gone: the focus goes to what has come in its place.
  useLayoutEffect(() => {
    if (came.current === null) return;
    const wanted = open === null ? `[data-place="${CSS.escape(came.current)}"]` : '.chip-place';
    box.current?.querySelector<HTMLElement>(wanted)?.focus({ preventScroll: true });
  }, [open]);
  const turn = (to: string | null): void => {
    came.current = to ?? open;
    setOpen(to);
  };
  return (
    <fieldset class="row" ref={box} aria-label={place?.name ?? words.board.allPlaces}>
      {place === undefined ? (
        places.map(({ key, name }) => (
          <button type="button" class="chip chip-place" key={key} data-place={key} onClick={() => turn(key)}>
            {name}
          </button>
        ))
      ) : (
        <>
          <button type="button" class="chip chip-place chip-open" onClick={() => turn(null)}>
            <span aria-hidden="true">{'\u2039'} </span>
            {place.name}
            <span class="visually-hidden">. {words.board.allPlaces}</span>
          </button>
          {place.codes.map(chip)}
        </>
      )}
    </fieldset>
  );
}
