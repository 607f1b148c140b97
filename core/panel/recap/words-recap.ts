import { cochranQ } from '../cochran-q.ts';
import { holmAdjusted } from '../holm.ts';
import { fleissKappa } from '../kappa.ts';
import { krippendorffAlpha } from '../krippendorff-alpha.ts';
import { EXACT_BUDGET } from '../row-permutations.ts';
import { meanJaccard } from '../word-overlap.ts';
import { limitsOfPanel, type PanelResult, PROPER_PANEL, RECAP_ALPHA } from './panel-result.ts';
import { type PermittedAnswer, type UsableAnswers, usableAnswers, usableParts } from './permitted-answers.ts';

type WordsByPour = readonly (readonly string[] | null)[];

export interface WordsQuestion<Pour> {
  readonly pours: readonly Pour[];
  /** The guest's words for each pour in the order of `pours`; null where the guest has no note on it. */
  readonly answers: readonly PermittedAnswer<WordsByPour>[];
  readonly guests: number;
}

interface WordTest {
  readonly word: string;
  /** Guests who used it, for each pour, among those with a note on every pour. */
  readonly ticks: readonly number[];
  readonly q: number;
  readonly p: number;
  readonly exact: boolean;
  /** Raised by Holm's rule for the number of words tested. */
  readonly adjustedP: number;
}

interface WordsFigures<Pour> {
  readonly pours: readonly {
    readonly pour: Pour;
    /** Guests with a note on it. */
    readonly n: number;
    /** Most used first. */
    readonly words: readonly { readonly word: string; readonly guests: number }[];
    /** Mean share of words that two guests have in common, 0 to 1; null without a pair to compare. */
    readonly overlap: number | null;
  }[];
  /** Words that two guests or more used for some pours and not for others, the most telling first. */
  readonly tests: readonly WordTest[];
  /** Agreement beyond chance on which word belongs to which pour; null where nothing can be compared. */
  readonly agreement: {
    readonly method: 'fleiss-kappa' | 'krippendorff-alpha';
    readonly value: number;
  } | null;
}

export type WordsResult<Pour> = PanelResult<
  'words',
  WordsFigures<Pour>,
  'cochran-q-holm' | 'counts-only',
  'words-tell-pours-apart' | 'no-word-shown-to-tell-pours-apart' | 'counts-only',
  'no-answers'
>;

const byCodeUnits = (one: string, other: string): number => (one < other ? -1 : Number(one > other));

function figuresOfPour(sets: readonly (readonly string[])[]) {
  const guests = new Map<string, number>();
  for (const set of sets) for (const word of new Set(set)) guests.set(word, (guests.get(word) ?? 0) + 1);
  const overlap = meanJaccard(sets);
  return {
    n: sets.length,
    words: [...guests]
      .map(([word, count]) => ({ word, guests: count }))
      .sort((one, other) => other.guests - one.guests || byCodeUnits(one.word, other.word)),
    overlap: overlap.status === 'overlap' ? overlap.meanJaccard : null,
  };
}

const vocabulary = (answers: readonly WordsByPour[]): string[] =>
  [...new Set(answers.flatMap((byPour) => byPour.flatMap((words) => words ?? [])))].sort(byCodeUnits);

/** Only guests with a note on every pour: elsewhere a word that is missing may just not have been looked for. */
function testWords(complete: readonly WordsByPour[]): WordTest[] {
  const words = vocabulary(complete);
  const sets = complete.map((byPour) => byPour.map((used) => new Set(used)));
  const tested = words.flatMap((word) => {
    const table = sets.map((byPour) => byPour.map((set) => (set.has(word) ? 1 : 0)));
    const test = cochranQ(table, Math.floor(EXACT_BUDGET / words.length));
    if (test.status !== 'tested' || test.informative < 2) return [];
    return [
      { word, ticks: test.ticks, q: test.q, p: test.pExact ?? test.pChiSquare, exact: test.pExact !== null },
    ];
  });
  const adjusted = holmAdjusted(tested.map(({ p }) => p));
  return tested
    .map((test, index) => ({ ...test, adjustedP: adjusted[index] ?? 1 }))
    .sort((one, other) => one.p - other.p || byCodeUnits(one.word, other.word));
}

/**
 * Each (pour, word) pair is a subject that a guest says yes or no to. Fleiss's kappa where every guest answered
 * for every pour; where some did not, Krippendorff's alpha, which bears gaps.
 */
function agreementOn(answers: readonly WordsByPour[], pourCount: number): WordsFigures<unknown>['agreement'] {
  const words = vocabulary(answers);
  const votes = answers.map((byPour) =>
    Array.from({ length: pourCount }, (_, index) => {
      const used = byPour[index] ?? null;
      const set = new Set(used);
      return words.map((word) => (used === null ? null : Number(set.has(word))));
    }).flat(),
  );
  if (votes.some((row) => row.includes(null))) {
    const found = krippendorffAlpha({ level: 'nominal', data: votes });
    return found.status === 'agreement' ? { method: 'krippendorff-alpha', value: found.alpha } : null;
  }
  const counts = Array.from({ length: pourCount * words.length }, (_, subject) => {
    const yes = votes.filter((row) => row[subject] === 1).length;
    return [yes, votes.length - yes];
  });
  const found = fleissKappa(counts);
  return found.status === 'agreement' ? { method: 'fleiss-kappa', value: found.kappa } : null;
}

/** Which words came up for which pour, and whether the room used them to tell pours apart. */
export function wordsRecap<Pour>({ pours, answers, guests }: WordsQuestion<Pour>): WordsResult<Pour> {
  const usable: UsableAnswers<WordsByPour> = usableParts(
    answers.map(({ answer, ...permission }) => ({
      ...permission,
      answer: pours.map((_, index) => answer[index] ?? null),
    })),
  );
  const n = usable.answers.length;
  const limits = limitsOfPanel(usable, { guests, proper: PROPER_PANEL.liking });
  if (n === 0) return { subject: 'words', outcome: 'none', n, reason: 'no-answers', limits };

  const complete = usableAnswers(answers, (byPour) =>
    pours.every((_, index) => (byPour[index] ?? null) !== null) ? byPour.slice(0, pours.length) : null,
  );
  const tests = complete.answers.length > 1 && pours.length > 1 ? testWords(complete.answers) : [];
  const figures: WordsFigures<Pour> = {
    // Anonymous guests must hide each other for each pour, not only over the evening.
    pours: pours.map((pour, index) => {
      const sets = usableAnswers(answers, (byPour) => byPour[index] ?? null, index);
      return { pour, ...figuresOfPour(sets.answers) };
    }),
    tests,
    agreement: agreementOn(usable.answers, pours.length),
  };
  if (tests.length === 0) {
    return {
      subject: 'words',
      outcome: 'result',
      n,
      figures,
      method: 'counts-only',
      meaning: 'counts-only',
      limits,
    };
  }
  const telling = tests.some(({ adjustedP }) => adjustedP <= RECAP_ALPHA);
  if (complete.incomplete > usable.incomplete) limits.push('incomplete-left-out');
  if (!telling) limits.push('not-shown-is-not-same');
  if (tests.length > 1) limits.push('many-words-tested');
  if (tests.some(({ exact }) => !exact)) limits.push('approximate-p');
  return {
    subject: 'words',
    outcome: 'result',
    n,
    figures,
    method: 'cochran-q-holm',
    meaning: telling ? 'words-tell-pours-apart' : 'no-word-shown-to-tell-pours-apart',
    limits: [...new Set(limits)],
  };
}
