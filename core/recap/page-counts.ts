import type { PourId } from '../ids.ts';
import { limitsOfPanel, type PanelResult, PROPER_PANEL } from '../panel/recap/panel-result.ts';
import { type UsableAnswers, usableAnswers, usableParts } from '../panel/recap/permitted-answers.ts';
import { rowsOf, type TableOfPages } from './table-of-pages.ts';

interface ColoursOfPour {
  readonly pour: PourId;
  readonly n: number;
  /** Codes of swatches, the most named first. */
  readonly colours: readonly { readonly colour: string; readonly guests: number }[];
}

interface StructureOfPour {
  readonly pour: PourId;
  readonly marks: readonly MarkSpread[];
}

interface MarkSpread {
  readonly mark: string;
  readonly n: number;
  readonly median: number;
  readonly least: number;
  readonly most: number;
  /** How many chose step 1, 2, ..., 5. */
  readonly counts: readonly number[];
}

type Counted<Subject extends string, Figures> = PanelResult<
  Subject,
  readonly Figures[],
  'counts-only',
  'counts-only',
  'no-answers'
>;
export type ColoursResult = Counted<'colours', ColoursOfPour>;
export type StructureResult = Counted<'structure', StructureOfPour>;

/** Which colours were named for each pour, and by how many. */
export function coloursRecap(table: TableOfPages, pours: readonly PourId[]): ColoursResult {
  const rows = rowsOf(table, pours, 'colour', ({ colour }) => colour);
  const any = usableParts(rows);
  const figures = pours.map((pour, index): ColoursOfPour => {
    const { answers } = usableAnswers(rows, (row) => row[index] ?? null, index);
    const named = new Map<string, number>();
    for (const colour of answers) named.set(colour, (named.get(colour) ?? 0) + 1);
    const colours = [...named]
      .map(([colour, guests]) => ({ colour, guests }))
      .sort((one, other) => other.guests - one.guests || (one.colour < other.colour ? -1 : 1));
    return { pour, n: answers.length, colours };
  });
  return counted('colours', any, table, figures);
}

/** How the marks of sweet, sour, body and the like are spread over their five steps. */
export function structureRecap(table: TableOfPages, pours: readonly PourId[]): StructureResult {
  const rows = rowsOf(table, pours, 'structure', ({ structure }) =>
    Object.keys(structure).length > 0 ? structure : null,
  );
  const any = usableParts(rows);
  const codes = [
    ...new Set(rows.flatMap(({ answer }) => answer.flatMap((marks) => Object.keys(marks ?? {})))),
  ];
  const figures = pours.map((pour, index): StructureOfPour => {
    const marks = codes.sort().flatMap((mark) => {
      // Anonymous guests must hide each other for each single mark.
      const { answers } = usableAnswers(rows, (row) => stepOf(row[index]?.[mark]), index);
      return answers.length === 0 ? [] : [spreadOf(mark, answers)];
    });
    return { pour, marks };
  });
  return counted('structure', any, table, figures);
}

const steps = [1, 2, 3, 4, 5] as const;
const stepOf = (value: number | undefined): number | null =>
  value !== undefined && steps.some((step) => step === value) ? value : null;

function spreadOf(mark: string, answers: readonly number[]): MarkSpread {
  const sorted = [...answers].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return {
    mark,
    n: sorted.length,
    median: ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2,
    least: sorted[0] ?? 0,
    most: sorted[sorted.length - 1] ?? 0,
    counts: steps.map((step) => sorted.filter((each) => each === step).length),
  };
}

function counted<Subject extends string, Figures>(
  subject: Subject,
  any: UsableAnswers<unknown>,
  { guests }: TableOfPages,
  figures: readonly Figures[],
): Counted<Subject, Figures> {
  const n = any.answers.length;
  const limits = limitsOfPanel(any, { guests: guests.length, proper: PROPER_PANEL.liking });
  return n === 0
    ? { subject, outcome: 'none', n, reason: 'no-answers', limits }
    : { subject, outcome: 'result', n, figures, method: 'counts-only', meaning: 'counts-only', limits };
}
