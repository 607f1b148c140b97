import { withDrawnIds } from '../../../core/planning/serving/drawn-ids.ts';
import { type Plan, planSchema } from '../../../core/tasting.ts';
import { newPourId } from '../pours/new-pour-id.ts';
import { words } from '../words.ts';

export interface FileProblem {
  /** Where in the file, such as `pours 3, abv`; empty for the whole. */
  readonly where: string;
  readonly what: string;
}

export type OpenedPlan =
  | { readonly is: 'plan'; readonly plan: Plan }
  | { readonly is: 'not-json' }
  | { readonly is: 'problems'; readonly problems: readonly FileProblem[] };

/** A plan as a file to keep; photos belong to the server that holds them and stay there. */
export function writePlanFile(plan: Plan): string {
  const pours = plan.pours.map(({ photos: _, ...pour }) => pour);
  return `${JSON.stringify({ ...plan, pours }, undefined, 2)}\n`;
}

/** More are not told one by one: then it is another file altogether. */
const mostProblems = 12;

/** A plan from a file's text, by the schema and nothing else; every problem with its place. */
export function readPlanFile(text: string): OpenedPlan {
  let content: unknown;
  try {
    content = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return { is: 'not-json' };
  }
  if (typeof content !== 'object' || content === null || Array.isArray(content)) return { is: 'not-json' };
  const parsed = planSchema.safeParse(content);
  if (!parsed.success) {
    const problems = parsed.error.issues.slice(0, mostProblems).map((issue) => ({
      where: issue.path.map((part) => (typeof part === 'number' ? String(part + 1) : String(part))).join(' '),
      what: sentenceOf(issue),
    }));
    return { is: 'problems', problems };
  }
  const ids = parsed.data.pours.map(({ id }) => id);
  const doubled = ids.findIndex((id, index) => ids.indexOf(id) !== index);
  if (doubled >= 0) {
    return {
      is: 'problems',
      problems: [{ where: `pours ${doubled + 1} id`, what: words.copies.issues.doubled }],
    };
  }
  const pours = parsed.data.pours.map(({ photos: _, ...pour }) => pour);
  return { is: 'plan', plan: withDrawnIds({ ...parsed.data, pours }, newPourId) };
}

type Issue = NonNullable<ReturnType<typeof planSchema.safeParse>['error']>['issues'][number];

/** What is wrong at one place of the file, as a sentence. */
function sentenceOf(issue: Issue): string {
  const said = words.copies.issues;
  switch (issue.code) {
    case 'too_big':
      return said.tooBig(String(issue.maximum));
    case 'too_small':
      return said.tooSmall(String(issue.minimum));
    case 'invalid_value':
      return said.unknownValue(issue.values.map(String).join(', '));
    case 'unrecognized_keys':
      return said.unknownKeys(issue.keys.join(', '));
    case 'invalid_format':
    case 'custom':
      return said.format;
    default:
      return said.kind;
  }
}

/** The same evening to host again: without its date and what was ticked for it, and with pours that nobody knows by their ids. */
export function againOf(plan: Plan, title: string): Plan {
  const { startsAt: _, ...rest } = plan;
  return withDrawnIds(
    { ...rest, numbers: [], prepared: [], title: [...title].slice(0, 120).join('') },
    newPourId,
  );
}
