import type { ComponentChildren } from 'preact';
import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import type { NoteField as Field } from '../../shared/notes/entry.ts';
import { pageInWords } from '../../shared/notes/in-words.ts';
import { useLazyPart } from '../../shared/page/lazy-part.ts';
import { GuessPlace } from '../guess/guess-place.tsx';
import { words as pageWords } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { closingText } from '../stage/word-sheets.ts';
import { ReflectMarks } from './closing-pages.tsx';
import { NoteField } from './note-field.tsx';
import { type OfPour, SenseMarks, useSheet } from './sense-marks.tsx';

/** The tapped parts of each sense, in the order of the steps. */
const tapped = [
  { sense: 'look', fields: ['colour'] },
  { sense: 'nose', fields: ['nose-words'] },
  { sense: 'palate', fields: ['palate-words', 'structure'] },
  { sense: 'finish', fields: ['finish-words', 'liking'] },
] as const satisfies readonly { sense: string; fields: readonly Field[] }[];

/** The page of one glass, from top to bottom; what was tapped is read in a line, and unfolds to be changed. */
export function NotePage({ stage, pour }: OfPour) {
  const said = useTapped({ stage, pour });
  return (
    <div class="stack note-page">
      {stage.sealed.includes(pour) && <p class="soft small">{pageWords.saved.later}</p>}
      {tapped.map(({ sense, fields }) => (
        <div class="note-part" key={`${pour}/${sense}`}>
          <NoteField pour={pour} field={sense} rows={1} />
          <Folded
            title={sense === 'look' ? words.unfoldLook : words.unfold(pageWords.fields[sense])}
            said={said(fields)}
          >
            <SenseMarks stage={stage} pour={pour} sense={sense} />
          </Folded>
        </div>
      ))}
      <div class="note-part">
        <NoteField key={`${pour}/thoughts`} pour={pour} field="thoughts" rows={1} />
        <Folded title={words.fields.feelings} said={said(['feelings'])}>
          <ReflectMarks stage={stage} pour={pour} />
        </Folded>
      </div>
      <GuessPlace pour={pour} />
    </div>
  );
}

/** What was tapped into some fields, in words; empty until the words have been fetched. */
function useTapped({ stage, pour }: OfPour): (fields: readonly Field[]) => string {
  const { notebook } = useRoom().follower;
  const sheet = useSheet({ stage, pour });
  const closing = useLazyPart(closingText);
  return (fields) => {
    if (sheet === undefined || closing === undefined) return '';
    const entries = fields.map((field) => ({ field, value: notebook.read(pour, field) }));
    return pageInWords(entries, { sheet, closing, liking: words.liking.steps })
      .map(({ text }) => text)
      .join('. ');
  };
}

interface FoldedProps {
  readonly title: string;
  readonly said: string;
  readonly children: ComponentChildren;
}

function Folded({ title, said, children }: FoldedProps) {
  return (
    <details class="folded">
      <summary>
        {title}
        {said !== '' && (
          <span class="folded-said" dir="auto">
            {said}
          </span>
        )}
      </summary>
      <div class="stack">{children}</div>
    </details>
  );
}
