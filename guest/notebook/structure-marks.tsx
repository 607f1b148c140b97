import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import type { PourId } from '../../shared/wire/views.ts';
import type { MarkText } from '../../shared/words/word-board.ts';
import type { WordSheet } from '../../shared/words/word-sheet.ts';
import { useRoom } from '../room/room.ts';

interface StructureMarksProps {
  readonly pour: PourId;
  readonly sheet: WordSheet;
  /** Bubbles are asked about. */
  readonly fizzes: boolean;
}

/** How sweet, how bitter, how long: five steps each, the chosen one in words. */
export function StructureMarks({ pour, sheet, fizzes }: StructureMarksProps) {
  return (
    <section class="stack-tight" aria-label={words.structure.title}>
      <h2>{words.structure.title}</h2>
      {sheet.board.marks.map((mark) => {
        const text = sheet.text.marks[mark];
        return text === undefined || (mark === 'fizz' && !fizzes) ? null : (
          <Mark key={mark} pour={pour} mark={mark} text={text} />
        );
      })}
    </section>
  );
}

interface MarkProps {
  readonly pour: PourId;
  readonly mark: string;
  readonly text: MarkText;
}

function Mark({ pour, mark, text }: MarkProps) {
  const { notebook } = useRoom().follower;
  const marks = notebook.read(pour, 'structure');
  const value = marks[mark];
  return (
    <fieldset class="stack-close" aria-label={text.name}>
      <p class="mark-name" aria-hidden="true">
        <strong>{text.name}</strong>{' '}
        <span class="soft">{value === undefined ? words.structure.none : text.steps[value - 1]}</span>
      </p>
      <div class="mark-steps">
        {text.steps.map((step, index) => (
          <button
            type="button"
            key={step}
            class="mark-step"
            data-filled={value !== undefined && index < value ? 'true' : undefined}
            aria-pressed={value === index + 1}
            aria-label={step}
            onClick={() => {
              const { [mark]: _, ...others } = marks;
              notebook.write(
                pour,
                'structure',
                value === index + 1 ? others : { ...marks, [mark]: index + 1 },
              );
            }}
          />
        ))}
      </div>
    </fieldset>
  );
}
