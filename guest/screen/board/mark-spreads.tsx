import type { MarkSpread } from '../../../shared/talk/board-pages.ts';
import type { WordSheet } from '../../../shared/words/word-sheet.ts';
import { words } from '../language.ts';

interface MarkSpreadsProps {
  readonly marks: readonly MarkSpread[];
  readonly sheet: WordSheet;
}

/** How far apart the table is on each mark: its five steps from least to most, and how many people put it there. */
export function MarkSpreads({ marks, sheet }: MarkSpreadsProps) {
  const known = sheet.board.marks.flatMap((code) => {
    const [spread, text] = [marks.find((mark) => mark.code === code), sheet.text.marks[code]];
    return spread === undefined || text === undefined ? [] : [{ code, people: spread.people, text }];
  });
  return (
    <ul class="board-rows">
      {known.map(({ code, people, text }) => (
        <li key={code}>
          <span>{text.name}</span>
          <ol class="board-steps">
            {text.steps.map((step, index) => (
              <Step key={step} step={step} people={people[index] ?? 0} most={Math.max(...people)} />
            ))}
          </ol>
        </li>
      ))}
    </ul>
  );
}

interface StepProps {
  readonly step: string;
  readonly people: number;
  /** The most people that any step of this mark has. */
  readonly most: number;
}

function Step({ step, people, most }: StepProps) {
  return (
    <li data-chosen={people > 0 ? 'true' : undefined}>
      <span class="visually-hidden">{words.talk.step(step, people)}</span>
      <span class="board-step-fill" style={{ blockSize: `${(people / most) * 100}%` }} aria-hidden="true" />
      {people > 0 && (
        <span class="board-step-word" aria-hidden="true">
          {step} <strong class="figures">{people}</strong>
        </span>
      )}
    </li>
  );
}
